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

    private const string Given = "the library's or the relative's";
    private const string Each = "see docs/sources.md";

    private static readonly ChoiceKind<Hardiness> HardinessWord = new([
        ("hardy", Hardiness.Hardy),
        ("half-hardy", Hardiness.HalfHardy),
        ("tender", Hardiness.Tender),
        ("very tender", Hardiness.VeryTender),
    ]);

    private static readonly ChoiceKind<bool> FromSowing = new([("sowing", true), ("emergence", false)]);
    private static readonly NumberKind Spread = new(0, 2);
    private static readonly OptionalKind<double> AnyTemperature = Kinds.Temperature.OrNone("any", takesNone: true);
    private static readonly WholeKind Held = new(0, 365, "day", isBare: true);
    private static readonly WholeKind Discarded = new(1, 365, "day", isBare: true);
    private static readonly SpaceIdsKind Spaces = new();

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
            HardenAboveC = 0,
            DamageBelowC = 0,
            FieldAboveC = 0,
            HoldDays = 0,
            DiscardAfterDays = 0,
            FlatHoldDays = 0,
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
            .Key("hardiness", HardinessWord, crop => crop.Hardiness, (crop, word) => crop with { Hardiness = word })
            .Means("How it stands cold.", Each, Given)
            .Key("emerge_base", Kinds.Temperature, crop => crop.EmergeBaseC, (crop, celsius) => crop with { EmergeBaseC = celsius })
            .Means("Medium temperature at and below which nothing comes up.", Each, Given)
            .Key(
                "emerge_optimum",
                Kinds.Temperature,
                crop => crop.EmergeOptimumC,
                (crop, celsius) => crop with { EmergeOptimumC = celsius }
            )
            .Means("Medium temperature at which it comes up fastest; above the base.", Each, Given)
            .Key(
                "emerge_ceiling",
                Kinds.Temperature,
                crop => crop.EmergeCeilingC,
                (crop, celsius) => crop with { EmergeCeilingC = celsius }
            )
            .Means("Medium temperature at and above which nothing comes up; above the optimum.", Each, Given)
            .Key(
                "emerge_heat",
                new NumberKind(0.1, 10_000, "degree-days C above the base", "degree-days C", "degree-days C"),
                crop => crop.EmergeHeat,
                (crop, heat) => crop with { EmergeHeat = heat }
            )
            .Means("Heat to emergence of half the seedlings. A base and its heat are a pair: never mix sources.", Each, Given)
            .Key("emerge_sigma", Spread, crop => crop.EmergeSigma, (crop, sigma) => crop with { EmergeSigma = sigma })
            .Means("Spread within a batch: standard deviation of the natural logarithm of the heat.", Each, Given)
            .Key("emerge_cv", Spread, crop => crop.EmergeCv, (crop, cv) => crop with { EmergeCv = cv })
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
            .Key("max_mat", AnyTemperature, crop => crop.MaxMatC, (crop, celsius) => crop with { MaxMatC = celsius })
            .Means("Hottest mat it may stand on; none for any.", Each, Given)
            .Key(
                "leave_mat_at",
                new ShareKind(aboveNone: true, belowAll: true),
                crop => crop.LeaveMatAt,
                (crop, share) => crop with { LeaveMatAt = share }
            )
            .Means("Share of the coming seedlings that must be up before a tray leaves the mat.", Each, Given)
            .Key("emerge_give_up_days", Discarded, crop => crop.EmergeGiveUpDays, (crop, days) => crop with { EmergeGiveUpDays = days })
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
            .Means("Share of plants lost between emergence and the field.", Each, Given)
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
                FromSowing,
                crop => Ready(crop).FromSowing,
                (crop, sowing) => crop with { DaysToReady = Ready(crop) with { FromSowing = sowing } },
                (crop, _) => crop.DaysToReady is { } written ? FromSowing[written.FromSowing] : ""
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
            .Key("growth_cv", Spread, crop => crop.GrowthCv, (crop, cv) => crop with { GrowthCv = cv })
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
            .Key("min_night", AnyTemperature, crop => crop.MinNightC, (crop, celsius) => crop with { MinNightC = celsius })
            .Means(
                "Coldest night set-point it may stand in; none for any bench, heated or not. House and crop are compared to 0.05 C, "
                    + "so that "
                    + "55 F and 12.8 C are one.",
                Each,
                Given
            )
            .Key("benches", Spaces, crop => crop.Benches, (crop, ids) => crop with { Benches = ids })
            .Means("Benches it may use, first choice first; none to go by min_night.", Each, Given)
            .Key("mats", Spaces, crop => crop.Mats, (crop, ids) => crop with { Mats = ids })
            .Means("Mats it may use, first choice first; none to go by max_mat.", Each, Given)
            .Key(
                "hardening_nights",
                new WholeKind(0, 100, "night", isBare: true),
                crop => crop.HardeningNights,
                (crop, nights) => crop with { HardeningNights = nights }
            )
            .Means("Nights on the table that must count.", Each, Given)
            .Key("harden_above", Kinds.Temperature, crop => crop.HardenAboveC, (crop, celsius) => crop with { HardenAboveC = celsius })
            .Means("A night at or above it counts for hardening.", Each, Given)
            .Key("damage_below", Kinds.Temperature, crop => crop.DamageBelowC, (crop, celsius) => crop with { DamageBelowC = celsius })
            .Means("Below it trays on the table are carried in; not above harden_above.", Each, Given)
            .Key("field_above", Kinds.Temperature, crop => crop.FieldAboveC, (crop, celsius) => crop with { FieldAboveC = celsius })
            .Means("Trays go to the field when every forecast night is at or above it.", Each, Given)
            .Key("hold_days", Held, crop => crop.HoldDays, (crop, days) => crop with { HoldDays = days })
            .Means("Days past due at which a tray is over-held.", Each, Given)
            .Key("discard_after_days", Discarded, crop => crop.DiscardAfterDays, (crop, days) => crop with { DiscardAfterDays = days })
            .Means("Days past due at which a tray is thrown out; above hold_days.", Each, Given)
            .Key("flat_hold_days", Held, crop => crop.FlatHoldDays, (crop, days) => crop with { FlatHoldDays = days })
            .Means("Days past the pot-up stage at which a flat is over-held.", Each, Given)
            .Key("flat_discard_days", Discarded, crop => crop.FlatDiscardDays, (crop, days) => crop with { FlatDiscardDays = days })
            .Means("Days past the pot-up stage at which a flat is thrown out; above flat_hold_days.", Each, Given)
            .Key(
                "harvest_after_days",
                Held.OrNone("", takesNone: true),
                crop => crop.HarvestAfterDays,
                (crop, days) => crop with { HarvestAfterDays = days }
            )
            .Means(
                "Days from setting out to the first day of harvest; with harvest_days. Used by \"succession\" alone.",
                leftOut: "not known"
            )
            .Key(
                "harvest_days",
                Discarded.OrNone("", takesNone: true),
                crop => crop.HarvestDays,
                (crop, days) => crop with { HarvestDays = days }
            )
            .Means("Days on which it is harvested; with harvest_after_days. Used by \"succession\" alone.", leftOut: "not known")
            .Key("tray", new TextKind("tray type id"), crop => crop.TrayId, (crop, id) => crop with { TrayId = id })
            .Means("Tray type when the plan does not say.", Each, Given)
            .Table();

    /// <summary>
    /// Whether a column is a value of the crop, which has a source: not its id, its name or the relative that lends it values.
    /// </summary>
    public static bool IsSourced(string column) => column is not ("id" or "name" or "like");

    private static WrittenDays Ready(Crop crop) => crop.DaysToReady ?? new WrittenDays(0, false, false);

    // As it stands in the file, so that it can be copied there, and what it comes to.
    private static string ShowDays(Crop crop)
    {
        if (crop.DaysToReady is not ({ FromSowing: true } or { WithHardening: true }))
        {
            return FormattableString.Invariant($"{crop.GrowthDays:#,##0.###} days from emergence, hardening not included");
        }

        var (days, fromSowing, withHardening) = crop.DaysToReady;
        var written = FormattableString.Invariant($"{days:#,##0.###} days from {FromSowing[fromSowing]}");
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
