using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>A line of plan.csv: a batch, and how often it is sown again.</summary>
/// <param name="Order">The batch, or the first of a run of successions.</param>
/// <param name="EveryDays">Days from one succession to the next; 0 for a single batch.</param>
/// <param name="Times">Successions in all; 1 for a single batch.</param>
public sealed record PlanLine(BatchOrder Order, int EveryDays = 0, int Times = 1);

/// <summary>The columns of plan.csv.</summary>
public static class PlanFields
{
    /// <summary>Name of the file.</summary>
    public const string File = "plan.csv";

    // A thousand successions a year apart still end within the calendar.
    /// <summary>Most sowings of a line.</summary>
    public const int MostTimes = 1000;

    /// <summary>Most days from a sowing of a line to the next.</summary>
    public const int MostEveryDays = 365;

    private const int MostPlants = 10_000_000;
    private const int MostTrays = 100_000;
    private const int MostSeeds = 100_000;
    private const int MostTolerance = 60;
    private const string OfTheCrop = "the crop's";
    private const string ByAssurance = "rules, stand_assurance";

    /// <summary>The ways to raise a batch, as they are written.</summary>
    public static ChoiceKind<Method> MethodWord { get; } =
        new([("direct", Method.Direct), ("pot up", Method.PotUp), ("pot-up", Method.PotUp), ("potup", Method.PotUp)], named: 2);

    /// <summary>The covers of the field, as they are written.</summary>
    public static ChoiceKind<FieldCover> FieldCoverWord { get; } =
        new([
            ("open", FieldCover.Open),
            ("row cover", FieldCover.RowCover),
            ("low tunnel", FieldCover.LowTunnel),
            ("tunnel", FieldCover.Tunnel),
        ]);

    /// <summary>A line of which nothing is said.</summary>
    public static PlanLine Nothing { get; } =
        new(
            new BatchOrder
            {
                Id = "",
                CropId = "",
                Grower = "site",
                Plants = 0,
                TrayId = "",
                SeedsPerCell = 0,
                Germination = 0,
            }
        );

    /// <summary>The columns, in the order of the reference.</summary>
    public static FieldTable<PlanLine> Table { get; } =
        FieldTable
            .Of(File, File, Nothing)
            .Key("id", Kinds.Name, line => line.Order.Id, (line, id) => Of(line, line.Order with { Id = id }))
            .Means("Name of the batch, unique in the plan.")
            .Required("give the batch a name of its own")
            .Fixed("what is drawn for a batch depends on its name")
            .Key("crop", new TextKind("crop id"), line => line.Order.CropId, (line, id) => Of(line, line.Order with { CropId = id }))
            .Means("Crop of the built-in library or of crops.csv.")
            .Required("name the crop")
            .Fixed("it chooses lines")
            .Key("grower", Kinds.Name, line => line.Order.Grower, (line, name) => Of(line, line.Order with { Grower = name }))
            .Means("Whose batch it is.", Why.Ours)
            .Key(
                "plants",
                new WholeKind(1, MostPlants, "plant"),
                line => line.Order.Plants,
                (line, plants) => Of(line, line.Order with { Plants = plants })
            )
            .Means("Plants wanted in the field, of each succession; seedlings kept together in a cell are one plant.")
            .Required("write how many plants the field wants")
            .Key(
                "sow",
                Kinds.Date.OrNone("worked out from set_out"),
                line => line.Order.Sow,
                (line, date) => Of(line, line.Order with { Sow = date })
            )
            .Means("Sow date. Write sow, set_out, or both.")
            .Key(
                "set_out",
                Kinds.Date.OrNone("worked out from sow"),
                line => line.Order.SetOut,
                (line, date) => Of(line, line.Order with { SetOut = date })
            )
            .Means("Date the field wants it.")
            .Key(
                "every_days",
                new WholeKind(1, MostEveryDays, "day").OrNone("none"),
                line => line.EveryDays == 0 ? null : line.EveryDays,
                (line, days) => line with { EveryDays = days ?? 0 }
            )
            .Means("Days from one succession to the next; needs times.")
            .Key("times", new WholeKind(1, MostTimes), line => line.Times, (line, times) => line with { Times = times })
            .Means("Successions in all: row x becomes the batches x-1, x-2 and so on, each every_days later.")
            .Key("method", MethodWord, line => line.Order.Method, (line, method) => Of(line, line.Order with { Method = method }))
            .Means("Sown in its own tray, or dense in an open flat and potted up.", Why.Ours)
            .Key("tray", new TextKind("tray type id"), line => line.Order.TrayId, (line, id) => Of(line, line.Order with { TrayId = id }))
            .Means("Tray it goes to the field in.", "crops.csv, tray", OfTheCrop)
            .Key(
                "flat",
                new TextKind("tray type id"),
                line => line.Order.FlatId ?? "none",
                (line, id) => Of(line, line.Order with { FlatId = id })
            )
            .Means("Open flat it is sown in; only for pot up.", leftOut: "required for pot up")
            .Key(
                "trays",
                new WholeKind(1, MostTrays, "tray").OrNone("worked out"),
                line => line.Order.Trays,
                (line, trays) => Of(line, line.Order with { Trays = trays })
            )
            .Means("Trays to fill.", ByAssurance)
            .Key(
                "flats",
                new WholeKind(1, MostTrays, "flat").OrNone("worked out"),
                line => line.Order.Flats,
                (line, flats) => Of(line, line.Order with { Flats = flats })
            )
            .Means("Flats to sow; only for pot up.", ByAssurance)
            .Key(
                "seeds_per_cell",
                new WholeKind(1, 100, "seed"),
                line => line.Order.SeedsPerCell,
                (line, seeds) => Of(line, line.Order with { SeedsPerCell = seeds })
            )
            .Means(
                "Seeds in each cell; only for direct. Seedlings above keep_per_cell of crops.csv are thinned out.",
                "crops.csv, seeds_per_cell",
                OfTheCrop
            )
            .Key(
                "seeds_per_flat",
                new WholeKind(1, MostSeeds, "seed"),
                line => line.Order.SeedsPerFlat,
                (line, seeds) => Of(line, line.Order with { SeedsPerFlat = seeds })
            )
            .Means("Seeds in each flat; only for pot up.", "trays.csv, seeds_per_flat", "the flat's")
            .Key(
                "germination",
                new ShareKind(aboveNone: true),
                line => line.Order.Germination,
                (line, share) => Of(line, line.Order with { Germination = share })
            )
            .Means("Germination on the packet.", "crops.csv, germination", OfTheCrop)
            .Key(
                "tested_on",
                Kinds.Date.OrNone("unknown"),
                line => line.Order.TestedOn,
                (line, date) => Of(line, line.Order with { TestedOn = date })
            )
            .Means("Date of the germination test; not after sowing.")
            .Key("variety", Kinds.Title, line => line.Order.Variety, (line, variety) => Of(line, line.Order with { Variety = variety }))
            .Means("Variety, for labels, lists and the order; it plans nothing.", leftOut: "none")
            .Key(
                "packet",
                Kinds.Name,
                line => line.Order.PacketId ?? "its own",
                (line, packet) => Of(line, line.Order with { PacketId = packet })
            )
            .Means("Packet the seed comes from: batches of one packet come up alike.")
            .Key(
                "thousand_seeds",
                Kinds.Money.OrNone("the site's"),
                line => line.Order.ThousandSeeds,
                (line, price) => Of(line, line.Order with { ThousandSeeds = price })
            )
            .Means("Price of a thousand seeds of this batch.", "site.toml, [prices]")
            .Key(
                "earlier",
                new WholeKind(0, MostTolerance, "day"),
                line => line.Order.EarlierDays,
                (line, days) => Of(line, line.Order with { EarlierDays = days })
            )
            .Means("Days by which \"level\" may sow it earlier than planned; used by nothing else.", Why.Ours)
            .Key(
                "later",
                new WholeKind(0, MostTolerance, "day"),
                line => line.Order.LaterDays,
                (line, days) => Of(line, line.Order with { LaterDays = days })
            )
            .Means("Days by which \"level\" may sow it later than planned; used by nothing else.", Why.Ours)
            .Key("finish", CropFields.Spaces, line => line.Order.Finish, (line, ids) => Of(line, line.Order with { Finish = ids }))
            .Means("Benches on which its trays finish, first choice first.", "crops.csv, finish", OfTheCrop)
            .Key(
                "finish_at",
                FinishFields.Share,
                line => line.Order.FinishAt,
                (line, share) => Of(line, line.Order with { FinishAt = share })
            )
            .Means("Share of growth from which trays may go to finish.", "crops.csv, finish_at", OfTheCrop)
            .Key(
                "finish_after_days",
                FinishFields.Days,
                line => line.Order.FinishAfterDays,
                (line, days) => Of(line, line.Order with { FinishAfterDays = days })
            )
            .Means(
                "Days after potting up, or after coming up where sown directly; instead of finish_at.",
                "crops.csv, finish_after_days",
                OfTheCrop
            )
            .Key(
                "field_cover",
                FieldCoverWord,
                line => line.Order.FieldCover,
                (line, cover) => Of(line, line.Order with { FieldCover = cover })
            )
            .Means(
                "What it stands under in the field; [rules] says how much warmer its nights are there. Under a tunnel no rain holds it.",
                Why.Ours
            )
            .Key("note", Kinds.Text, line => line.Order.Note, (line, note) => Of(line, line.Order with { Note = note }))
            .Means("Anything.", leftOut: "empty")
            .Table();

    private static PlanLine Of(PlanLine line, BatchOrder order) => line with { Order = order };
}
