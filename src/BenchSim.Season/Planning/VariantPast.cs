using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>
/// The past of a season under way as its variants have it (docs/model.md section 10): the same. A variant says what is done from today on;
/// what of it would change what is over is a fault.
/// </summary>
/// <param name="below">Plan of the base, with its past.</param>
/// <param name="past">The past.</param>
internal sealed class VariantPast(SeasonPlan below, SeasonPast past)
{
    private const string Site = "site.toml";

    private DateOnly Today => below.FirstDay.AddDays(past.Today);

    /// <summary>The past of the base; null where its seasons are played from the first day.</summary>
    public static VariantPast? Of(SeasonPlan below) => below.Past is { } past ? new VariantPast(below, past) : null;

    /// <summary>
    /// The variant with the days that are known, its houses and mats as they were until today, and no house that it adds open before.
    /// </summary>
    public Scenario Under(Scenario variant) =>
        variant with
        {
            Known = below.Scenario.Known,
            Houses = [.. variant.Houses.Select(Under)],
            Spaces = [.. variant.Spaces.Select(Under)],
        };

    /// <summary>What of a variant would change what is over.</summary>
    public IEnumerable<Fault> Faults(Scenario variant) => [.. Batches(variant), .. Spaces(variant), .. Houses(variant)];

    /// <summary>Whether anything of a batch of the base has been sown.</summary>
    public bool IsBegun(string id) => At(id) is >= 0 and var at && past.Batches[at].IsBegun;

    /// <summary>
    /// A batch that has been sown, in the spaces of the variant: its dates and numbers are those of the base, but for the date on which the
    /// field wants it. Null for one that has not.
    /// </summary>
    public BatchPlan? Kept(Scenario variant, BatchOrder order)
    {
        if (!IsBegun(order.Id))
        {
            return null;
        }

        var was = below.Batches[At(order.Id)];
        var crop = variant.Crops.First(each => string.Equals(each.Id, order.CropId, StringComparison.Ordinal));
        return SpaceGroups.WithFinish(
            variant,
            was with
            {
                Order = order,
                Crop = crop,
                SetOutOn = order.SetOut is { } wanted && wanted != was.Order.SetOut ? WorkDayBefore(variant, wanted) : was.SetOutOn,
                Mats = SpaceGroups.Mats(variant, crop),
                Benches = SpaceGroups.Benches(variant, crop),
                Tables = SpaceGroups.Tables(variant),
            }
        );
    }

    /// <summary>The sowings of a variant that it plans for a day that is over, and the base does not.</summary>
    public IEnumerable<Fault> TooLate(IEnumerable<BatchPlan> batches) =>
        batches
            .Where(batch => batch.SowOn < Today && !IsBegun(batch.Order.Id))
            .Where(batch => At(batch.Order.Id) is var at && (at < 0 || below.Batches[at].SowOn != batch.SowOn))
            .Select(batch => new Fault(
                batch.Order.Place,
                $"batch \"{batch.Order.Id}\" would have to be sown on {Iso(batch.SowOn)}, which is over on {Iso(Today)}",
                "let it be sown on that day or later"
            ));

    /// <summary>The past, by the positions of a variant.</summary>
    public SeasonPast In(Scenario variant)
    {
        int[] spaces = [.. below.Scenario.Spaces.Select(space => SpaceIn(variant, space.Id))];
        return past with
        {
            Batches =
            [
                .. variant.Batches.Select(order =>
                    At(order.Id) is >= 0 and var at
                        ? past.Batches[at] with
                        {
                            Trays = [.. past.Batches[at].Trays.Select(Moved)],
                        }
                        : BatchPast.NotBegun
                ),
            ],
        };

        TrayPast Moved(TrayPast trays) => trays with { Path = [.. trays.Path.Select(stay => (spaces[stay.Space], stay.Day))] };
    }

    private House Under(House house)
    {
        if (HouseBelow(house.Id) is not { } was)
        {
            return house.Opening == HouseOpening.WhenNeeded || house.OpensOn >= Today
                ? house
                : house with
                {
                    Opening = HouseOpening.FromDate,
                    OpensOn = Today,
                };
        }

        return house with
        {
            Was = was.Was ?? (was == house ? null : new HouseWas(was, past.Today)),
        };
    }

    private Space Under(Space space)
    {
        var was = below.Scenario.Spaces.FirstOrDefault(each => string.Equals(each.Id, space.Id, StringComparison.Ordinal));
        return was?.MatC is not { } warmth || space.MatC is null || (was.MatWas is null && warmth.Equals(space.MatC))
            ? space
            : space with
            {
                MatWas = was.MatWas ?? new MatWas(warmth, past.Today),
            };
    }

    private IEnumerable<Fault> Batches(Scenario variant)
    {
        foreach (var (was, at) in below.Batches.Select((batch, at) => (batch.Order, at)).Where(each => past.Batches[each.at].IsBegun))
        {
            var order = variant.Batches.FirstOrDefault(each => string.Equals(each.Id, was.Id, StringComparison.Ordinal));
            var place = order?.Place ?? was.Place;
            if (order is null)
            {
                yield return new Fault(place, $"batch \"{was.Id}\" is left out, and by the log it has been sown", "leave it in");
            }
            else if (order.Sow != was.Sow)
            {
                yield return new Fault(
                    place,
                    $"batch \"{was.Id}\" would be sown {Day(order.Sow)} instead of {Day(was.Sow)}, and by the log it has been sown",
                    "leave its sow date as it was"
                );
            }
            else if (Sown(order) != Sown(was))
            {
                yield return new Fault(
                    place,
                    $"batch \"{was.Id}\" would be sown otherwise, and by the log it has been sown",
                    "leave its crop, trays, flats, seed and method as they were; plants and set_out may change"
                );
            }
            else if (order.SetOut != was.SetOut && !(order.SetOut >= Today))
            {
                yield return new Fault(
                    place,
                    $"batch \"{was.Id}\" would be wanted {Day(order.SetOut)}, which is over on {Iso(Today)}",
                    "write a set_out of that day or later"
                );
            }
        }
    }

    private IEnumerable<Fault> Spaces(Scenario variant)
    {
        var stood = past
            .Batches.SelectMany((batch, at) => batch.Trays.SelectMany(trays => trays.Path, (_, stay) => (stay.Space, at)))
            .DistinctBy(each => each.Space)
            .OrderBy(each => each.Space);
        foreach (var (position, at) in stood)
        {
            var (was, order) = (below.Scenario.Spaces[position], below.Batches[at].Order);
            var now = SpaceIn(variant, was.Id) is >= 0 and var there ? variant.Spaces[there] : null;
            var isSame =
                now is not null
                && (now.Kind, now.IsChamber) == (was.Kind, was.IsChamber)
                && string.Equals(now.HouseId, was.HouseId, StringComparison.Ordinal);
            if (!isSame)
            {
                yield return new Fault(
                    order.Place,
                    $"batch \"{order.Id}\" has stood in \"{was.Id}\", which "
                        + (now is null ? "is taken out" : "would be of another kind or in another house"),
                    "leave that space where it is; it may have other places from today on"
                );
            }
        }
    }

    private IEnumerable<Fault> Houses(Scenario variant) =>
        from house in variant.Houses
        let was = HouseBelow(house.Id)
        where was is not null && (house.Opening, house.OpensOn) != (was.Opening, was.OpensOn) && !(Opens(house) && Opens(was))
        select new Fault(
            new SourcePlace(Site, 0, 0),
            $"the house \"{house.Id}\" would be open on other days before {Iso(Today)}, which are over",
            "open it on that day or later, or leave it as it was"
        );

    // Not before today.
    private bool Opens(House house) => house.Opening == HouseOpening.FromDate && house.OpensOn >= Today;

    private House? HouseBelow(string id) =>
        below.Scenario.Houses.FirstOrDefault(house => string.Equals(house.Id, id, StringComparison.Ordinal));

    // What was settled when it was sown.
    private static BatchOrder Sown(BatchOrder order) => VariantPlanner.Bare(order) with { SetOut = null, Plants = 1, Grower = "" };

    private int At(string id) => Position(below.Batches, batch => string.Equals(batch.Order.Id, id, StringComparison.Ordinal));

    private static int SpaceIn(Scenario variant, string id) =>
        Position(variant.Spaces, space => string.Equals(space.Id, id, StringComparison.Ordinal));

    private static int Position<T>(ImmutableArray<T> all, Func<T, bool> isIt)
    {
        for (var at = 0; at < all.Length; at++)
        {
            if (isIt(all[at]))
            {
                return at;
            }
        }

        return -1;
    }

    private static DateOnly WorkDayBefore(Scenario variant, DateOnly day)
    {
        while (!variant.Rules.IsWorkDay(day))
        {
            day = day.AddDays(-1);
        }

        return day;
    }

    private static string Day(DateOnly? date) => date is { } day ? Iso(day) : "on a day that is worked out";

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
