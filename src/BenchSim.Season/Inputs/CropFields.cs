using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The columns of crops.csv.</summary>
public static class CropFields
{
    /// <summary>Name of the file.</summary>
    public const string File = "crops.csv";

    /// <summary>Name of the column of <see cref="Crop.StandLossCorrelation"/>, which has a usual value.</summary>
    public const string StandLossCorrelation = "stand_loss_correlation";

    /// <summary>Name of the column that says where the values of a row come from.</summary>
    public const string Source = "source";

    private const string Given = "the library's or the relative's";
    private const string Each = "see docs/sources.md";

    private static readonly ChoiceKind<Hardiness> s_hardinessWord = new([
        ("hardy", Hardiness.Hardy),
        ("half-hardy", Hardiness.HalfHardy),
        ("tender", Hardiness.Tender),
        ("very tender", Hardiness.VeryTender),
    ]);

    private static readonly ChoiceKind<bool> s_fromSowing = new([("sowing", true), ("emergence", false)]);
    private static readonly NumberKind s_spread = new(0, 2);
    private static readonly OptionalKind<double> s_anyTemperature = Kinds.Temperature.OrNone("any", takesNone: true);
    private static readonly OptionalKind<double> s_asTheOptimum = Kinds.Temperature.OrNone("as emerge_optimum", takesNone: true);
    private static readonly OptionalKind<double> s_weeks = new NumberKind(0.1, 52, "weeks").OrNone("none known", takesNone: true);
    private static readonly WholeKind s_held = new(0, 365, "day", isBare: true);
    private static readonly WholeKind s_discarded = new(1, 365, "day", isBare: true);

    /// <summary>Space ids, first choice first.</summary>
    internal static Kind<ImmutableArray<string>> Spaces => s_spaces;

    private static readonly SpaceIdsKind s_spaces = new();

    /// <summary>A crop of which nothing is said.</summary>
    public static Crop Nothing { get; } =
        new()
        {
            Id = "",
            Name = "",
            Hardiness = default,
            EmergeBaseC = 0,
            EmergeOptimumC = 0,
            EmergeCeilingC = 0,
            EmergeHeat = 0,
            EmergeSigma = 0,
            EmergeCv = 0,
            GerminateAtC = 0,
            BottomHeat = false,
            LeaveMatAt = 0,
            EmergeGiveUpDays = 0,
            Germination = 0,
            SeedsPerCell = 0,
            KeepPerCell = 0,
            StandLoss = 0,
            GrowthBaseC = 0,
            GrowthCapC = 0,
            ReferenceC = 0,
            GrowthDays = 0,
            GrowthCv = 0,
            PotUpDays = 0,
            PotUpCheckDays = 0,
            PotUpLoss = 0,
            HardeningNights = 0,
            TableAboveC = 0,
            DamageBelowC = 0,
            FieldAboveC = 0,
            HoldDays = 0,
            DiscardAfterDays = 0,
            FlatDiscardDays = 0,
            TrayId = "",
        };

    /// <summary>The columns, in the order of the reference.</summary>
    public static FieldTable<Crop> Table { get; } =
        FieldTable
            .Of(File, File, Nothing)
            .Key("id", Kinds.Name, crop => crop.Id)
            .Means("Crop. An id of the built-in library overrides just the cells that are filled.")
            .Required("name the crop of this row")
            .Fixed("it chooses the crop")
            .Key("name", Kinds.Title, crop => crop.Name, (crop, name) => crop with { Name = name })
            .Means("Name shown to people.", leftOut: "the id")
            .Key<string>("like", new TextKind("crop id"))
            .Means(
                "For a new crop: the relative that lends the cells left blank; that relative may borrow too, at most five in a row.",
                leftOut: "none"
            )
            .Key("hardiness", s_hardinessWord, crop => crop.Hardiness, (crop, word) => crop with { Hardiness = word })
            .Means("How it stands cold.", Each, Given)
            .Key("emerge_base", Kinds.Temperature, crop => crop.EmergeBaseC, (crop, celsius) => crop with { EmergeBaseC = celsius })
            .Means("Medium temperature at and below which nothing comes up.", Each, Given)
            .Key(
                "emerge_optimum",
                Kinds.Temperature,
                crop => crop.EmergeOptimumC,
                (crop, celsius) => crop with { EmergeOptimumC = celsius }
            )
            .Means("Coolest medium temperature at which it comes up fastest; above the base.", Each, Given)
            .Key(
                "emerge_plateau",
                s_asTheOptimum,
                crop => crop.WrittenEmergePlateauC,
                (crop, celsius) => crop with { WrittenEmergePlateauC = celsius }
            )
            .Means(
                "Warmest medium temperature at which it comes up as fast; at or above the optimum, none for the optimum itself.",
                Each,
                Given
            )
            .Key(
                "emerge_ceiling",
                Kinds.Temperature,
                crop => crop.EmergeCeilingC,
                (crop, celsius) => crop with { EmergeCeilingC = celsius }
            )
            .Means("Medium temperature at and above which nothing comes up; above the plateau.", Each, Given)
            .Key(
                "emerge_heat",
                new NumberKind(0.1, 10_000, "degree-days C above the base", "degree-days C", "degree-days C"),
                crop => crop.EmergeHeat,
                (crop, heat) => crop with { EmergeHeat = heat }
            )
            .Means("Heat to emergence of half the seedlings. A base and its heat are a pair: never mix sources.", Each, Given)
            .Key("emerge_sigma", s_spread, crop => crop.EmergeSigma, (crop, sigma) => crop with { EmergeSigma = sigma })
            .Means("Spread within a batch: standard deviation of the natural logarithm of the heat.", Each, Given)
            .Key("emerge_cv", s_spread, crop => crop.EmergeCv, (crop, cv) => crop with { EmergeCv = cv })
            .Means("Spread from batch to batch: coefficient of variation.", Each, Given)
            .Key(
                "germination_curve",
                new CurveKind(),
                crop => crop.GerminationCurve,
                (crop, points) => crop with { GerminationCurve = points }
            )
            .Means("Normal seedlings by medium temperature; none for no effect.", Each, Given)
            .Key("germinate_at", Kinds.Temperature, crop => crop.GerminateAtC, (crop, celsius) => crop with { GerminateAtC = celsius })
            .Means("Medium temperature behind days_to_ready, between base and ceiling.", Each, Given)
            .Key("bottom_heat", Kinds.YesNo, crop => crop.BottomHeat, (crop, yes) => crop with { BottomHeat = yes })
            .Means("Whether it is started on a heat mat.", Each, Given)
            .Key("max_mat", s_anyTemperature, crop => crop.MaxMatC, (crop, celsius) => crop with { MaxMatC = celsius })
            .Means("Hottest mat it may stand on; none for any.", Each, Given)
            .Key(
                "leave_mat_at",
                new ShareKind(aboveNone: true, belowAll: true),
                crop => crop.LeaveMatAt,
                (crop, share) => crop with { LeaveMatAt = share }
            )
            .Means("Share of the coming seedlings that must be up before a tray leaves the mat.", Each, Given)
            .Key("emerge_give_up_days", s_discarded, crop => crop.EmergeGiveUpDays, (crop, days) => crop with { EmergeGiveUpDays = days })
            .Means("Days from sowing after which a tray that never came up is thrown out.", Each, Given)
            .Key(
                "germination",
                new ShareKind(aboveNone: true),
                crop => crop.Germination,
                (crop, share) => crop with { Germination = share }
            )
            .Means("Germination when the plan gives none.", Each, Given)
            .Key(
                "seeds_per_cell",
                new WholeKind(1, 100, "seed", isBare: true),
                crop => crop.SeedsPerCell,
                (crop, seeds) => crop with { SeedsPerCell = seeds }
            )
            .Means("Seeds a cell when the plan does not say.", Each, Given)
            .Key(
                "keep_per_cell",
                new WholeKind(1, 100, "plant", isBare: true),
                crop => crop.KeepPerCell,
                (crop, plants) => crop with { KeepPerCell = plants }
            )
            .Means("Seedlings kept a cell after thinning.", Each, Given)
            .Key("stand_loss", new ShareKind(belowAll: true), crop => crop.StandLoss, (crop, share) => crop with { StandLoss = share })
            .Means("Share of plants lost between emergence and the field, on average.", Each, Given)
            .Key(
                StandLossCorrelation,
                new NumberKind(0, Crop.MostStandLossCorrelation),
                crop => crop.StandLossCorrelation,
                (crop, correlation) => crop with { StandLossCorrelation = correlation }
            )
            .Means(
                "How far those losses come in lumps: the correlation of the loss of two plants of a batch. At 0 each plant is lost by "
                    + "itself; at 0.1 one batch in twenty loses nearly five times the average.",
                Each,
                FormattableString.Invariant($"{Given}; {Crop.UsualStandLossCorrelation} for a new crop")
            )
            .Key("growth_base", Kinds.Temperature, crop => crop.GrowthBaseC, (crop, celsius) => crop with { GrowthBaseC = celsius })
            .Means("Air temperature at and below which it does not grow.", Each, Given)
            .Key("growth_cap", Kinds.Temperature, crop => crop.GrowthCapC, (crop, celsius) => crop with { GrowthCapC = celsius })
            .Means("Air temperature above which it grows no faster; at least the reference.", Each, Given)
            .Key("reference", Kinds.Temperature, crop => crop.ReferenceC, (crop, celsius) => crop with { ReferenceC = celsius })
            .Means("Air temperature at which days_to_ready holds; above the base.", Each, Given)
            .Key(
                "days_to_ready",
                new NumberKind(0.1, 365, "days"),
                crop => Ready(crop).Days,
                (crop, days) => crop with { DaysToReady = Ready(crop) with { Days = days } },
                (crop, _) => ShowDays(crop)
            )
            .Means("Days to field size at the reference temperature.", Each, Given)
            .Key(
                "counted_from",
                s_fromSowing,
                crop => Ready(crop).FromSowing,
                (crop, sowing) => crop with { DaysToReady = Ready(crop) with { FromSowing = sowing } },
                (crop, _) => crop.DaysToReady is { } written ? s_fromSowing[written.FromSowing] : ""
            )
            .Means("Where days_to_ready begins.", Each, Given)
            .Key(
                "includes_hardening",
                Kinds.YesNo,
                crop => Ready(crop).WithHardening,
                (crop, yes) => crop with { DaysToReady = Ready(crop) with { WithHardening = yes } },
                (crop, _) => crop.DaysToReady is { } written ? Kinds.YesNo[written.WithHardening] : ""
            )
            .Means("Whether days_to_ready counts the nights of hardening.", Each, Given)
            .Key("weeks_min", s_weeks, crop => crop.WeeksMin, (crop, weeks) => crop with { WeeksMin = weeks })
            .Means(
                "Fewest weeks to field size that growers publish, counted as days_to_ready is; check warns when planned weeks are fewer.",
                Each,
                Given
            )
            .Key("weeks_max", s_weeks, crop => crop.WeeksMax, (crop, weeks) => crop with { WeeksMax = weeks })
            .Means("Most weeks likewise; with weeks_min, and not fewer.", Each, Given)
            .Key("growth_cv", s_spread, crop => crop.GrowthCv, (crop, cv) => crop with { GrowthCv = cv })
            .Means("Spread of growth from batch to batch: coefficient of variation.", Each, Given)
            .Key(
                "pot_up_days",
                new NumberKind(0, 365, "days", "days", "days"),
                crop => crop.PotUpDays,
                (crop, days) => crop with { PotUpDays = days }
            )
            .Means("Days from emergence to potting up at the reference temperature.", Each, Given)
            .Key(
                "pot_up_check_days",
                new NumberKind(0, 100, "days", "days", "days"),
                crop => crop.PotUpCheckDays,
                (crop, days) => crop with { PotUpCheckDays = days }
            )
            .Means("Days of growth lost to a pot-up at the reference temperature.", Each, Given)
            .Key("pot_up_loss", new ShareKind(belowAll: true), crop => crop.PotUpLoss, (crop, share) => crop with { PotUpLoss = share })
            .Means("Share of seedlings lost in potting up.", Each, Given)
            .Key("min_night", s_anyTemperature, crop => crop.MinNightC, (crop, celsius) => crop with { MinNightC = celsius })
            .Means(
                "Coldest night set-point it may stand in; none for any bench, heated or not. House and crop are compared to 0.05 C, "
                    + "so that "
                    + "55 F and 12.8 C are one.",
                Each,
                Given
            )
            .Key("benches", s_spaces, crop => crop.Benches, (crop, ids) => crop with { Benches = ids })
            .Means("Benches it may use, first choice first; none to go by min_night.", Each, Given)
            .Key("mats", s_spaces, crop => crop.Mats, (crop, ids) => crop with { Mats = ids })
            .Means("Mats it may use, first choice first; none to go by max_mat.", Each, Given)
            .Key("finish", s_spaces, crop => crop.Finish, (crop, ids) => crop with { Finish = ids })
            .Means(
                "Benches, mostly of a cooler house, on which its trays finish: they move there from finish_at or finish_after_days on, "
                    + "where there is room.",
                Each,
                "none"
            )
            .Key("finish_at", FinishFields.Share, crop => crop.FinishAt, (crop, share) => crop with { FinishAt = share })
            .Means("Share of growth from which trays may go to finish.", Each, FinishFields.UsualWords)
            .Key("finish_after_days", FinishFields.Days, crop => crop.FinishAfterDays, (crop, days) => crop with { FinishAfterDays = days })
            .Means("Days after potting up, or after coming up where sown directly; instead of finish_at.", Each, "none")
            .Key(
                "hardening_nights",
                new WholeKind(0, 100, "night", isBare: true),
                crop => crop.HardeningNights,
                (crop, nights) => crop with { HardeningNights = nights }
            )
            .Means("Nights on the table that must count: all but those for which the trays are carried in.", Each, Given)
            .Key("table_above", Kinds.Temperature, crop => crop.TableAboveC, (crop, celsius) => crop with { TableAboveC = celsius })
            .Means("Trays go to the table when every forecast night, under the row cover if there is one, is at or above it.", Each, Given)
            .NoLonger(
                "harden_above",
                "write table_above, the forecast nights that let trays go out, and damage_below, the night below which they are carried in"
            )
            .Key("damage_below", Kinds.Temperature, crop => crop.DamageBelowC, (crop, celsius) => crop with { DamageBelowC = celsius })
            .Means(
                "Below it trays on the table are carried in, and the night does not count; not above table_above or field_above.",
                Each,
                Given
            )
            .Key("field_above", Kinds.Temperature, crop => crop.FieldAboveC, (crop, celsius) => crop with { FieldAboveC = celsius })
            .Means("Trays go to the field when every forecast night, under field_cover of the plan, is at or above it.", Each, Given)
            .Key("hold_days", s_held, crop => crop.HoldDays, (crop, days) => crop with { HoldDays = days })
            .Means("Days past due at which a tray is over-held.", Each, Given)
            .Fixed(RuleFields.Judged)
            .Key("discard_after_days", s_discarded, crop => crop.DiscardAfterDays, (crop, days) => crop with { DiscardAfterDays = days })
            .Means("Days past due at which a tray is thrown out; above hold_days.", Each, Given)
            .Key("flat_discard_days", s_discarded, crop => crop.FlatDiscardDays, (crop, days) => crop with { FlatDiscardDays = days })
            .Means("Days past the pot-up stage at which a flat is thrown out.", Each, Given)
            .NoLonger(
                "flat_hold_days",
                "take it out: a flat is thrown out flat_discard_days past its pot-up stage, and nothing happens before"
            )
            .Key(
                "harvest_after_days",
                s_held.OrNone("", takesNone: true),
                crop => crop.HarvestAfterDays,
                (crop, days) => crop with { HarvestAfterDays = days }
            )
            .Means(
                "Days from setting out to the first day of harvest; with harvest_days. Used by \"succession\" alone.",
                leftOut: "not known"
            )
            .Key(
                "harvest_days",
                s_discarded.OrNone("", takesNone: true),
                crop => crop.HarvestDays,
                (crop, days) => crop with { HarvestDays = days }
            )
            .Means("Days on which it is harvested; with harvest_after_days. Used by \"succession\" alone.", leftOut: "not known")
            .Key("tray", new TextKind("tray type id"), crop => crop.TrayId, (crop, id) => crop with { TrayId = id })
            .Means("Tray type when the plan does not say.", Each, Given)
            .Key(Source, Kinds.Title, set: (crop, _) => crop)
            .Means("Where the values of the row come from; \"check --sources\" shows it beside them.", leftOut: "empty")
            .Fixed("it says where values come from, not how the crop grows")
            .Table();

    /// <summary>
    /// Whether a column is a value of the crop, which has a source: not its id, its name, the relative that lends it values
    /// or the source itself.
    /// </summary>
    public static bool IsSourced(string column) => column is not ("id" or "name" or "like" or Source);

    private static WrittenDays Ready(Crop crop) => crop.DaysToReady ?? new WrittenDays(0, false, false);

    // As it stands in the file, so that it can be copied there, and what it comes to.
    private static string ShowDays(Crop crop)
    {
        if (crop.DaysToReady is not ({ FromSowing: true } or { WithHardening: true }))
        {
            return FormattableString.Invariant($"{crop.GrowthDays:#,##0.###} days from emergence, hardening not included");
        }

        var (days, fromSowing, withHardening) = crop.DaysToReady;
        var written = FormattableString.Invariant($"{days:#,##0.###} days from {s_fromSowing[fromSowing]}");
        var grown = FormattableString.Invariant($"{Math.Round(crop.GrowthDays, 1):#,##0.###} days of growth");
        return $"{written}{(withHardening ? " with hardening" : "")} ({grown})";
    }

    /// <summary>Ids of spaces.</summary>
    private sealed class SpaceIdsKind() : Kind<ImmutableArray<string>>("space ids separated by |, or none")
    {
        public override bool TakesNone => true;

        public override bool TryRead(IWritten written, out ImmutableArray<string> value)
        {
            value =
            [
                .. written
                    .Text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                    .Select(part => written.With(part).Name())
                    .OfType<string>(),
            ];
            return !value.IsEmpty;
        }

        public override string Show(ImmutableArray<string> value, UnitSystem units) =>
            value.IsEmpty ? "worked out" : string.Join(", ", value);

        public override bool IsSame(ImmutableArray<string> one, ImmutableArray<string> other) =>
            one.SequenceEqual(other, StringComparer.Ordinal);
    }

    /// <summary>Points of the germination curve: "10 C 61 % | 15 C 80 %".</summary>
    private sealed class CurveKind()
        : Kind<ImmutableArray<GerminationPoint>>("points `10 C 61 % | 15 C 80 %`, or none", Kinds.Temperature.Unit)
    {
        public override bool TakesNone => true;

        public override bool TryRead(IWritten written, out ImmutableArray<GerminationPoint> value)
        {
            var points = new List<GerminationPoint>();
            value = [];
            foreach (var part in written.Text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                if (!TrySplit(part, out var temperature, out var percent))
                {
                    written.Refuse(
                        $"has a point {written.With(part).Quoted}",
                        "write a temperature and a share in each, such as 10 C 61 % | 15 C 80 %"
                    );
                    return false;
                }

                if (
                    !Kinds.Temperature.TryRead(written.With(temperature), out var celsius)
                    || !Kinds.Share.TryRead(written.With(percent), out var share)
                )
                {
                    return false;
                }

                if (points.Count > 0 && celsius <= points[^1].TemperatureC)
                {
                    written.Refuse($"is not in order of temperature at {written.With(part).Quoted}", "write the coldest point first");
                    return false;
                }

                points.Add(new GerminationPoint(celsius, Math.Round(share * 100, 6)));
            }

            value = [.. points];
            return !value.IsEmpty;
        }

        public override string Show(ImmutableArray<GerminationPoint> value, UnitSystem units) =>
            string.Join(", ", value.Select(point => $"{Kinds.Temperature.Show(point.TemperatureC, units)}: {Plain(point.Percent)} %"));

        public override bool IsSame(ImmutableArray<GerminationPoint> one, ImmutableArray<GerminationPoint> other) =>
            one.SequenceEqual(other);

        // The share is the last number of a point, with the per cent sign after it: "10 C 61 %" is "10 C" and "61 %".
        private static bool TrySplit(string point, [NotNullWhen(true)] out string? temperature, [NotNullWhen(true)] out string? percent)
        {
            var number = point.EndsWith('%') ? point[..^1].TrimEnd() : "";
            var start = number.LastIndexOf(' ');
            (temperature, percent) = start < 0 ? (null, null) : (number[..start].Trim(), number[(start + 1)..] + " %");
            return temperature is { Length: > 0 };
        }
    }
}
