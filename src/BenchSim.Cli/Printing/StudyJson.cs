using System.Text.Json;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>The shapes that studies print for machines.</summary>
internal static class StudyJson
{
    /// <summary>A chance with its interval; "seasons" are those in which it happened.</summary>
    public static void Write(Utf8JsonWriter json, string name, Chance chance)
    {
        json.WriteStartObject(name);
        json.WriteNumber("seasons", chance.Hits);
        json.WriteNumber("share", chance.Share);
        json.WriteNumber("low", chance.Low);
        json.WriteNumber("high", chance.High);
        json.WriteEndObject();
    }

    /// <summary>A number; one that cannot be told is null, as JSON has no NaN. Nothing is ever -0.</summary>
    public static void WriteNumber(Utf8JsonWriter json, string name, double number)
    {
        if (double.IsFinite(number))
        {
            json.WriteNumber(name, number == 0 ? 0 : number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
