using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Laying;

/// <summary>What was answered to the ten questions. An empty text is "don't know".</summary>
public record FarmAnswers
{
    /// <summary>Name of the folder to lay down.</summary>
    public required string Folder { get; set; }

    /// <summary>Calendar year of the season.</summary>
    public int Year { get; set; }

    /// <summary>Name of the farm.</summary>
    public string Name { get; set; } = "";

    /// <summary>The question that the folder is to answer; none of the ten asks for it, and it is written where it is given.</summary>
    public string Question { get; set; } = "";

    /// <summary>Latitude, degrees.</summary>
    public string Latitude { get; set; } = "";

    /// <summary>Whether it is measured in feet and Fahrenheit.</summary>
    public UnitSystem Units { get; set; } = UnitSystem.Imperial;

    /// <summary>Last frost of a usual year, a date.</summary>
    public string LastFrost { get; set; } = "";

    /// <summary>Last frost of a late year, one in ten, a date.</summary>
    public string LateFrost { get; set; } = "";

    /// <summary>Coldest night of a usual winter.</summary>
    public string Coldest { get; set; } = "";

    /// <summary>A climate that is known whole, instead of the last frosts and the coldest night; null for none.</summary>
    [JsonIgnore]
    public FarmClimate? Climate { get; set; }

    /// <summary>First sowing.</summary>
    public string FirstSowing { get; set; } = "";

    /// <summary>Last plants out.</summary>
    public string LastOut { get; set; } = "";

    /// <summary>Work days, with commas between.</summary>
    public string WorkDays { get; set; } = "";

    /// <summary>The houses, one or more.</summary>
    public ImmutableArray<HouseAnswers> Houses { get; set; } = [];

    /// <summary>Trays on the mats at once.</summary>
    public string Mats { get; set; } = "";

    /// <summary>How warm the mats are.</summary>
    public string MatTemperature { get; set; } = "";

    /// <summary>Trays in a warm closed room; 0 for none.</summary>
    public string Chamber { get; set; } = "";

    /// <summary>Trays on the hardening table.</summary>
    public string Table { get; set; } = "";

    /// <summary>Whether it has a row cover: yes or no.</summary>
    public string Cover { get; set; } = "";

    /// <summary>Trays that may stand on the floor when all is full.</summary>
    public string Floor { get; set; } = "";

    /// <summary>Whether trays go off the mats early when all is full: yes or no.</summary>
    public string OffMatEarly { get; set; } = "";

    /// <summary>Days late that do not hurt yet.</summary>
    public string LateDays { get; set; } = "";

    /// <summary>Days kept in hand; none of the ten asks for them, and they are written where they are given.</summary>
    public string SlackDays { get; set; } = "";

    /// <summary>The questions, as farmers ask them: who else grows here.</summary>
    public string Growers { get; set; } = "";
}

/// <summary>What was answered of a house.</summary>
public sealed record HouseAnswers
{
    /// <summary>Whether it is a closed room with lights over racks, where no sun comes in: none of the ten asks for it.</summary>
    public bool IsUnderLights { get; set; }

    /// <summary>Shape; none of the ten asks for it.</summary>
    public string Shape { get; set; } = "";

    /// <summary>Length.</summary>
    public string Length { get; set; } = "";

    /// <summary>Width.</summary>
    public string Width { get; set; } = "";

    /// <summary>Layers of plastic: 1 or 2.</summary>
    public string Layers { get; set; } = "";

    /// <summary>Night temperature really held.</summary>
    public string Night { get; set; } = "";

    /// <summary>Day temperature held; none of the ten asks for it, and it is written where it is given.</summary>
    public string Day { get; set; } = "";

    /// <summary>Date from which it is heated.</summary>
    public string From { get; set; } = "";

    /// <summary>Length of its benches.</summary>
    public string BenchLength { get; set; } = "";

    /// <summary>Width of its benches.</summary>
    public string BenchWidth { get; set; } = "";

    /// <summary>Trays on its benches, instead of their size.</summary>
    public string Trays { get; set; } = "";

    /// <summary>Trays on one more bench or rack; none of the ten asks for it, and it is written where it is given.</summary>
    public string UnitTrays { get; set; } = "";
}
