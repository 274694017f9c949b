using System.Collections.Immutable;
using BenchSim.Season.Evidence;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;
using BenchSim.Season.Values;

namespace BenchSim.Study.Learning;

/// <summary>A value of a crop, and what the seasons teach of it.</summary>
/// <param name="Kind">Which value.</param>
/// <param name="Value">What they teach.</param>
/// <param name="Batches">Batches behind it.</param>
/// <param name="Counted">Seeds or plants counted; 0 where trays were judged.</param>
/// <param name="Quantile">The value that it is below with a chance strictly between 0 and 1.</param>
public sealed record LearnedValue(LearnedKind Kind, Learned Value, int Batches, int Counted, Func<double, double> Quantile);

/// <summary>The germination of a packet against its test.</summary>
/// <param name="Season">Season.</param>
/// <param name="Packet">Packet, or the batch where the plan names none.</param>
/// <param name="Tested">Germination by its test, aged to the sowing; a share.</param>
/// <param name="Seen">What its counted seedlings teach of it.</param>
public sealed record LearnedPacket(string Season, string Packet, double Tested, Learned Seen);

/// <summary>A batch that was judged and yet teaches nothing of growth.</summary>
/// <param name="Season">Season.</param>
/// <param name="Batch">Batch.</param>
/// <param name="House">The house whose temperatures are not known well enough; null where it had not come up by then.</param>
public sealed record NotLearned(string Season, string Batch, HouseWeeks? House);

/// <summary>What the logs of seasons teach of a crop.</summary>
public sealed record CropLessons
{
    // A house that was this much colder or warmer than its set-point says grows another crop than the one that is played.
    private const double MostGapK = 1.5;

    /// <summary>The crop with the values in force before these seasons were learned from.</summary>
    public required Crop Crop { get; init; }

    /// <summary>The values of which they teach something, in the order of <see cref="LearnedKind"/>.</summary>
    public required ImmutableArray<LearnedValue> Values { get; init; }

    /// <summary>Packets with a test of which seedlings were counted.</summary>
    public required ImmutableArray<LearnedPacket> Packets { get; init; }

    /// <summary>Batches that were judged and teach nothing of growth.</summary>
    public required ImmutableArray<NotLearned> NotGrown { get; init; }

    /// <summary>Rows that count trays which someone chose: they say nothing of the crop.</summary>
    public required int Volunteered { get; init; }

    /// <summary>Batches that teach anything.</summary>
    public required int Batches { get; init; }

    /// <summary>Whether anything of it was seen.</summary>
    public bool HasAny => !Values.IsEmpty || !Packets.IsEmpty || !NotGrown.IsEmpty || Volunteered > 0;

    /// <summary>What seasons teach of a crop.</summary>
    /// <param name="crop">The crop with its values before, and where they come from.</param>
    /// <param name="seasons">The seasons; the batches of other crops are left out.</param>
    /// <param name="deviations">How far off values may be.</param>
    public static CropLessons Of(Crop crop, IEnumerable<LearnedSeason> seasons, Deviations deviations)
    {
        ArgumentNullException.ThrowIfNull(crop);
        ArgumentNullException.ThrowIfNull(seasons);
        ArgumentNullException.ThrowIfNull(deviations);
        (LearnedSeason Season, BatchEvidence Batch)[] batches =
        [
            .. seasons.SelectMany(
                season => season.Batches.Where(batch => string.Equals(batch.Batch.Crop.Id, crop.Id, StringComparison.Ordinal)),
                (season, batch) => (season, batch)
            ),
        ];
        return new Teacher(crop, batches, deviations).Teach();
    }

    private sealed class Teacher(Crop crop, (LearnedSeason Season, BatchEvidence Batch)[] batches, Deviations deviations)
    {
        private readonly (LearnedSeason Season, BatchEvidence Batch)[][] _packets =
        [
            .. batches.GroupBy(each => (each.Season.Name, each.Batch.Packet)).Select(group => group.ToArray()),
        ];
        private readonly HashSet<BatchEvidence> _grown = new(ReferenceEqualityComparer.Instance);
        private readonly EmergenceLesson _emergence = new(
            crop.EmergeHeat,
            deviations.Of(Source(crop, LearnedKind.EmergeHeat)),
            crop.EmergeCv,
            crop.Germination,
            batches.Any(each => each.Batch is { Picked: not null, Batch.Order.TakesCropGermination: true })
                ? deviations.Of(Source(crop, LearnedKind.Germination))
                : null,
            batches.Length == 0 ? 1 : batches.Min(each => each.Season.Plan.Scenario.Rules.GerminationSample)
        );

        public CropLessons Teach()
        {
            foreach (var packet in _packets.Where(packet => Picked(packet).Length > 0))
            {
                _emergence.See(Picked(packet), Tested(packet));
            }

            var heat = _emergence.Heat();
            var values = new List<LearnedValue>();
            if (heat.Seen > 0)
            {
                var counted = batches.Sum(each => each.Batch.Picked?.Among ?? 0);
                values.Add(new LearnedValue(LearnedKind.EmergeHeat, heat, heat.Seen, counted, _emergence.HeatQuantile));
            }

            if (_emergence.Germination() is { Seen: > 0 } germination)
            {
                var untested = batches.Count(each => each.Batch is { Picked: not null, Batch.Order.TakesCropGermination: true });
                values.Add(
                    new LearnedValue(LearnedKind.Germination, germination, untested, germination.Seen, _emergence.GerminationQuantile)
                );
            }

            Losses(values, heat.New);
            var notGrown = Growth(values);
            return new CropLessons
            {
                Crop = crop,
                Values = [.. values],
                Packets = [.. _packets.Where(packet => Tested(packet) is not null && Picked(packet).Length > 0).Select(Told)],
                NotGrown = [.. notGrown],
                Volunteered = batches.Sum(each => each.Batch.Volunteered),
                Batches = batches.Count(each =>
                    each.Batch is { Picked: not null } or { Plants: not null } or { Potted: not null } || _grown.Contains(each.Batch)
                ),
            };
        }

        private static Provenance Source(Crop crop, LearnedKind kind) =>
            crop.Sources.GetValueOrDefault(kind.Column()) ?? new Provenance(Season.Values.Trust.Assumption, "");

        private static SeedCount[] Picked((LearnedSeason Season, BatchEvidence Batch)[] packet) =>
            [.. packet.Select(each => each.Batch.Picked).OfType<SeedCount>()];

        private static double? Tested((LearnedSeason Season, BatchEvidence Batch)[] packet) =>
            packet[0].Batch.Batch is { Order.TakesCropGermination: false } batch ? batch.Germination : null;

        private LearnedPacket Told((LearnedSeason Season, BatchEvidence Batch)[] packet)
        {
            var (counts, tested) = (Picked(packet), Tested(packet)!.Value);
            var law = _emergence.Packet(counts, tested);
            var seen = new Learned(tested, law.Mean, law.Quantile(0.05), law.Quantile(0.95), counts.Sum(count => count.Among));
            return new LearnedPacket(packet[0].Season.Name, packet[0].Batch.Packet, tested, seen);
        }

        private void Losses(List<LearnedValue> values, double heat)
        {
            var potted = new ShareLesson(crop.PotUpLoss, deviations.Of(Source(crop, LearnedKind.PotUpLoss)));
            var after = new LossLesson(crop.StandLoss, deviations.Of(Source(crop, LearnedKind.StandLoss)), crop.StandLossCorrelation);
            foreach (var packet in _packets.Where(packet => packet.Any(each => each.Batch is { Potted: not null } or { Plants: not null })))
            {
                var law = _emergence.Packet(Picked(packet), Tested(packet));
                const double Negligible = 1e-6;
                (double Weight, double Share)[] germination =
                [
                    .. law.Values.Select((share, cell) => (law.WeightOf(cell), share)).Where(each => each.Item1 > Negligible),
                ];
                foreach (var (_, batch) in packet)
                {
                    if (batch.Potted is { } pots)
                    {
                        potted.See(loss => LogPotted(pots, loss, heat, germination), (int)Math.Min(pots.Seeds, int.MaxValue / 2));
                    }

                    if (batch.Plants is { } plants)
                    {
                        (double, double)[] filled = [.. germination.Select(each => (each.Weight, plants.CellChance(each.Share, heat)))];
                        if (plants.Plants.IsExact)
                        {
                            after.See(plants.Plants.Least, plants.Cells, filled);
                        }
                        else
                        {
                            after.See(plants.Cells, filled, plants.LogInWords);
                        }
                    }
                }
            }

            Add(LearnedKind.PotUpLoss, potted.Lesson(), potted.Quantile, batches.Count(each => each.Batch.Potted is not null));
            Add(LearnedKind.StandLoss, after.Lesson(), after.Quantile, batches.Count(each => each.Batch.Plants is not null));

            void Add(LearnedKind kind, Learned learned, Func<double, double> quantile, int count)
            {
                if (count > 0)
                {
                    values.Add(new LearnedValue(kind, learned, count, learned.Seen, quantile));
                }
            }
        }

        // Between so few and so many seedlings came of the flats.
        private static double LogPotted(PottedCount pots, double loss, double heat, (double Weight, double Share)[] germination)
        {
            const double Wrong = 1e-6;
            var (seeds, relative, sum) = ((int)Math.Min(pots.Seeds, int.MaxValue), pots.Relative(heat), 0.0);
            foreach (var (weight, share) in germination)
            {
                var chance = share * relative * (1 - loss);
                var tooMany = pots.Most >= pots.Seeds ? 0 : Binomial.AtLeast(seeds, chance, (int)pots.Most + 1);
                sum += weight * (Binomial.AtLeast(seeds, chance, (int)pots.Least) - tooMany);
            }

            return Math.Log(Math.Max(sum, 0) + Wrong);
        }

        private List<NotLearned> Growth(List<LearnedValue> values)
        {
            var lesson = new MeanLesson(crop.GrowthDays, deviations.Of(Source(crop, LearnedKind.GrowthDays)), crop.GrowthCv);
            var not = new List<NotLearned>();
            foreach (var packet in _packets)
            {
                foreach (var (season, batch) in packet.Where(each => each.Batch.Growth is not null))
                {
                    var growth = batch.Growth!;
                    if (growth.Houses.IsEmpty || growth.Houses.Any(IsUnknown))
                    {
                        var house = growth.Houses.FirstOrDefault(IsUnknown);
                        not.Add(new NotLearned(season.Name, batch.Batch.Order.Id, house));
                        continue;
                    }

                    var law = _emergence.Packet(Picked(packet), Tested(packet));
                    lesson.See([
                        .. _emergence
                            .BatchHeat(batch.Counted, law)
                            .SelectMany(
                                each => growth.Days(each.Heat),
                                (each, bounds) => (each.Chance * bounds.Weight, new BatchValue(bounds.Above, bounds.UpTo))
                            ),
                    ]);
                    _grown.Add(batch);
                }
            }

            if (_grown.Count > 0)
            {
                values.Add(new LearnedValue(LearnedKind.GrowthDays, lesson.Lesson(), _grown.Count, 0, lesson.Quantile));
            }

            return not;
        }

        private static bool IsUnknown(HouseWeeks house) => house.Unwritten > 0 || Math.Abs(house.MeanGapK) > MostGapK;
    }
}
