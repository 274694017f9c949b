namespace BenchSim.Season.Weather;

/// <summary>One calendar month of a record beside the same month of generated years.</summary>
/// <param name="Month">Month, 1 to 12.</param>
/// <param name="Record">What the record shows.</param>
/// <param name="Generated">What the generated years show.</param>
/// <param name="RecordYears">Years the record's days of this month make up.</param>
/// <param name="GeneratedYears">Years generated.</param>
public sealed record MonthFit(int Month, MonthStatistics Record, MonthStatistics Generated, double RecordYears, double GeneratedYears)
{
    /// <summary>Generated less recorded mean lowest temperature, kelvin.</summary>
    public double TminMissC => Generated.TminMeanC - Record.TminMeanC;

    /// <summary>Generated less recorded mean highest temperature, kelvin.</summary>
    public double TmaxMissC => Generated.TmaxMeanC - Record.TmaxMeanC;

    /// <summary>Generated less recorded share of wet days.</summary>
    public double WetShareMiss => Generated.WetShare - Record.WetShare;

    /// <summary>Rain of the month in the record, millimetres a year.</summary>
    public double RecordRainMm => Record.RainMm / RecordYears;

    /// <summary>Rain of the month in the generated years, millimetres a year.</summary>
    public double GeneratedRainMm => Generated.RainMm / GeneratedYears;

    /// <summary>Nights below 4.4 C in the record, a year.</summary>
    public double RecordColdNights => Record.ColdNights / RecordYears;

    /// <summary>Nights below 4.4 C in the generated years, a year.</summary>
    public double GeneratedColdNights => Generated.ColdNights / GeneratedYears;
}
