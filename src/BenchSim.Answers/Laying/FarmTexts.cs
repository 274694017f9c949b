using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Laying;

/// <summary>
/// The files of a folder from the answers to the ten questions. What was not answered is written all the same, and marked as a default, so
/// that it can be seen and changed.
/// </summary>
public static class FarmTexts
{
    private const string Default = "default";

    /// <summary>The files, the plan still empty.</summary>
    /// <param name="answers">What was answered.</param>
    public static ImmutableArray<InputFile> Of(FarmAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        const string laid =
            "Laid down from ten questions. A line that ends in \"default\" rests on no answer of yours: put your own value there.";
        return [InputFile.Of(FileNames.Plan, PlanHead), InputFile.Of(FileNames.Site, Site(answers, laid))];
    }

    /// <summary>The first line of a plan: the columns that are filled in most often.</summary>
    public static string PlanHead => string.Join(",", PlanFields.Table.Names.Take(7)) + ",times,method,tray,flat,note\n";

    /// <summary>The text of site.toml.</summary>
    /// <param name="answers">What was answered.</param>
    /// <param name="remark">What its first line says, on one line.</param>
    public static string Site(FarmAnswers answers, string remark)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var isImperial = answers.Units == UnitSystem.Imperial;
        var text = new Page(answers.Units);
        text.Say(remark);
        text.Section("site");
        text.Line("name", answers.Name, "Our farm");
        text.WordIfGiven("question", answers.Question);
        text.Word("units", isImperial ? "imperial" : "metric", "");
        text.Line("latitude", answers.Latitude, "44");
        text.Section("season");
        text.Line("opens", answers.FirstSowing, Date(answers.Year, 2, 15));
        text.Line("closes", answers.LastOut, Date(answers.Year, 6, 15));
        Houses(text, answers);
        Spaces(text, answers);
        text.Section("rules");
        text.Line("work_days", answers.WorkDays, "Mon, Tue, Wed, Thu, Fri, Sat");
        text.WordIfGiven("slack_days", answers.SlackDays);
        text.Line("late_days", answers.LateDays, "7");
        text.Line(
            "cover_gain",
            answers.Cover is "no" ? (isImperial ? "0 F" : "0 C") : "",
            isImperial ? "6 F" : "3.3 C",
            answers.Cover is "yes"
        );
        text.Section("relief");
        string[] reliefs =
        [
            .. (answers.Floor is "0" ? Array.Empty<string>() : ["aisle"]).Concat(answers.OffMatEarly is "no" ? [] : ["off mat early"]),
        ];
        text.Word("order", string.Join(", ", reliefs), answers.Floor.Length == 0 ? Default : "");
        Weather(text, answers);
        return text.ToString();
    }

    /// <summary>Why no folder can be laid down from answers: what goes into the climate must be read; null where it can.</summary>
    /// <param name="answers">What was answered.</param>
    public static string? Refusal(FarmAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var faults = new Known(answers).Faults;
        return faults.IsEmpty ? null : string.Join(' ', faults.Select(fault => $"{fault.What}; {fault.Instead}."));
    }

    private static void Houses(Page text, FarmAnswers answers)
    {
        foreach (var (at, house) in AllHouses(answers).Index())
        {
            var isFirst = at == 0;
            text.Section("house");
            text.Word("id", IdOf(at), "");
            text.Word("name", isFirst ? (house.IsUnderLights ? "Container" : "Main house") : $"House {at + 1}", "");
            text.Line("night", house.Night, text.Either(isFirst ? "60 F" : "50 F", isFirst ? "15 C" : "10 C"));
            text.WordIfGiven("day", house.Day);
            text.Line("open", house.From, isFirst ? "all season" : Date(answers.Year, 3, 15));
            if (house.IsUnderLights)
            {
                text.Word("day_lift", text.Either("0 F", "0 C"), "no sun comes in");
                continue;
            }

            text.Line("shape", house.Shape, "hoop");
            text.Line("length", house.Length, text.Either("48 ft", "15 m"), unit: text.Either("ft", "m"));
            text.Line("width", house.Width, text.Either("20 ft", "6 m"), unit: text.Either("ft", "m"));
            text.Line("covering", house.Layers is "1" ? "single-poly" : "", "double-poly", house.Layers is "2");
        }
    }

    private static void Spaces(Page text, FarmAnswers answers)
    {
        if (answers.Mats is not "0")
        {
            text.Section("space");
            text.Word("id", "mats", "");
            text.Word("name", "Heat mats", "");
            text.Word("kind", "mat", "");
            text.Word("house", IdOf(0), "");
            text.Line("places", answers.Mats, "12");
            text.Line("temperature", answers.MatTemperature, text.Either("75 F", "24 C"));
        }

        if (answers.Chamber.Length > 0 && answers.Chamber is not "0")
        {
            text.Section("space");
            text.Word("id", "chamber", "");
            text.Word("name", "Germination chamber", "");
            text.Word("kind", "chamber", "");
            text.Line("places", answers.Chamber, "20");
            text.Line("temperature", "", text.Either("75 F", "24 C"));
        }

        foreach (var (at, house) in AllHouses(answers).Index())
        {
            text.Section("space");
            text.Word("id", house.IsUnderLights ? "racks" : IdOf(at) + "-bench", "");
            text.Word("name", BenchName(house, at), "");
            text.Word("kind", "bench", "");
            text.Word("house", IdOf(at), "");
            if (house.Trays.Length > 0 || (at > 0 && house.BenchLength.Length == 0))
            {
                text.Line("places", house.Trays, "30");
            }
            else
            {
                text.Line("length", house.BenchLength, text.Either("24 ft", "7 m"), unit: text.Either("ft", "m"));
                text.Line("width", house.BenchWidth, text.Either("5 ft", "1.5 m"), unit: text.Either("ft", "m"));
            }

            text.WordIfGiven("unit_places", house.UnitTrays);
            if (at == 0 && answers.Floor is not "0")
            {
                text.Line("aisle_places", answers.Floor, "10");
            }
        }

        text.Section("space");
        text.Word("id", "table", "");
        text.Word("name", "Hardening table", "");
        text.Word("kind", "table", "");
        text.Line("places", answers.Table, "40");
    }

    private static void Weather(Page text, FarmAnswers answers)
    {
        var read = new Known(answers);
        var source =
            answers.Climate is not null ? ""
            : read is { LastFrost: not null, ColdestC: not null } ? ", made of your last frosts and your coldest night"
            : ", made of usual last frosts and a usual coldest night";
        text.Section("weather");
        text.Say($"An invented climate{source}.");
        text.Say("For an answer to rely on put a daily record or the normals of a near station in its place: docs/weather.md.");
        text.Word("kind", "normals", "");
        var climate = answers.Climate ?? read.Climate();
        text.Word("low", text.Degrees(climate.LowC), "invented");
        text.Word("high", text.Degrees(climate.HighC), "invented");
        text.Word("low_sd", string.Join(", ", climate.SpreadK.Select(text.Spread)), "invented");
        text.Word("rain_days", string.Join(", ", climate.RainDays), "invented");
        text.Word("rain", string.Join(", ", climate.RainMm.Select(text.Depth)), "invented");
    }

    private static ImmutableArray<HouseAnswers> AllHouses(FarmAnswers answers) =>
        answers.Houses.IsDefaultOrEmpty ? [new HouseAnswers()] : answers.Houses;

    private static string BenchName(HouseAnswers house, int at) =>
        house.IsUnderLights ? "Racks under lights"
        : at == 0 ? "Main benches"
        : $"Benches of house {at + 1}";

    private static string IdOf(int house) => house == 0 ? "main" : $"house-{house + 1}";

    private static string Date(int year, int month, int day) => FormattableString.Invariant($"{year:0000}-{month:00}-{day:00}");

    /// <summary>What was answered of the climate, which is not written as it was typed.</summary>
    private sealed class Known
    {
        private const int UsualFrost = 135;
        private const int LaterBy = 15;

        // -10 F.
        private const double UsualColdestC = -23.3;

        private readonly TypedReader _reader;

        public Known(FarmAnswers answers)
        {
            _reader = new TypedReader(answers.Units);
            LastFrost = _reader.Date("The last frost of a usual year", answers.LastFrost)?.DayOfYear;
            LateFrost = _reader.Date("The last frost of a late year", answers.LateFrost)?.DayOfYear;
            ColdestC = _reader.Temperature("The coldest night", answers.Coldest);
        }

        public int? LastFrost { get; }

        public double? ColdestC { get; }

        public ImmutableArray<Fault> Faults => _reader.Faults;

        private int? LateFrost { get; }

        public FarmClimate Climate()
        {
            var usual = LastFrost ?? UsualFrost;
            return FarmClimate.Of(usual, Math.Max(LateFrost ?? (usual + LaterBy), usual + 1), ColdestC ?? UsualColdestC);
        }
    }

    /// <summary>A text of TOML, line by line.</summary>
    private sealed class Page(UnitSystem units)
    {
        private const int RemarkColumn = 28;

        private readonly StringBuilder _text = new();
        private string _section = "";

        public string Either(string imperial, string metric) => units == UnitSystem.Imperial ? imperial : metric;

        public string Degrees(ImmutableArray<double> celsius) =>
            string.Join(", ", celsius.Select(each => FormattableString.Invariant($"{Math.Round(Of(each), 1) + 0.0:0.#}")));

        public string Spread(double kelvin) =>
            FormattableString.Invariant($"{(units == UnitSystem.Imperial ? kelvin * 9 / 5 : kelvin):0.0} {Either("F", "C")}");

        public string Depth(int millimetres) =>
            Either(FormattableString.Invariant($"{millimetres / 25.4:0.0} in"), FormattableString.Invariant($"{millimetres} mm"));

        public void Say(string remark) => _text.Append("# ").Append(remark).Append('\n');

        public void Section(string section)
        {
            _section = section;
            _text.Append('\n').Append(FolderReference.Site.First(table => table.Section == section).Heading).Append('\n');
        }

        /// <summary>A key with what was answered, or with a default that is marked as one.</summary>
        /// <param name="key">The key.</param>
        /// <param name="answered">What was answered; empty for nothing.</param>
        /// <param name="otherwise">The default.</param>
        /// <param name="isAnswered">Whether the default is what was answered.</param>
        /// <param name="unit">Unit of a bare number.</param>
        public void Line(string key, string answered, string otherwise, bool isAnswered = false, string unit = "")
        {
            var isDefault = answered.Trim().Length == 0;
            var value = isDefault ? otherwise : answered.Trim();
            if (unit.Length > 0 && double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
            {
                value = $"{value} {unit}";
            }

            Word(key, value, isDefault && !isAnswered ? Default : "");
        }

        /// <summary>A key, where something was said of it.</summary>
        public void WordIfGiven(string key, string said)
        {
            if (said.Length > 0)
            {
                Word(key, said, "");
            }
        }

        /// <summary>A key, written as its kind wants it.</summary>
        public void Word(string key, string value, string remark)
        {
            var line = $"{key} = {TomlWriting.Of(FolderReference.KeyOf(_section, key)!.Kind, value)}";
            _text.Append(remark.Length == 0 ? line : line.PadRight(RemarkColumn) + " # " + remark).Append('\n');
        }

        public override string ToString() => _text.ToString();

        private double Of(double celsius) => units == UnitSystem.Imperial ? (celsius * 9 / 5) + 32 : celsius;
    }
}
