using System.Collections.Immutable;

namespace BenchSim.Answers.Laying;

/// <summary>The starters there are.</summary>
public static class Starters
{
    /// <summary>The starters, the smallest farm first.</summary>
    public static ImmutableArray<Starter> All { get; } = [HoopHouse, TwoHouses, SharedSite, Container];

    /// <summary>The starter of a word, whatever its case; null where there is none.</summary>
    /// <param name="id">The word.</param>
    public static Starter? Find(string id) =>
        All.FirstOrDefault(starter => string.Equals(starter.Id, id, StringComparison.OrdinalIgnoreCase));

    private static Starter HoopHouse =>
        new()
        {
            Id = "hoop-house",
            Name = "One hoop house",
            About = "A market garden with one heated hoop house, heat mats, two benches and a hardening table",
            Question = "Does the spring fit one hoop house?",
            Try = "Half as many plants again of every crop, on the same mats, benches and table: does it still fit?",
            Answers = isImperial =>
                Usual() with
                {
                    Mats = "16",
                    MatTemperature = Either(isImperial, "75 F", "24 C"),
                    Table = "36",
                    Floor = "6",
                    Houses = [House(isImperial, "48", "15", "60 F", "15 C") with { Trays = "46" }],
                },
            Plan =
            [
                new("onions", "onion", 2000, -18) { Tray = "288-cell" },
                new("kale", "kale", 200, -23),
                new("lettuce", "lettuce", 240, -23) { EveryDays = 7, Times = 5 },
                new("broccoli", "broccoli", 200, -20) { EveryDays = 14, Times = 2 },
                new("beets", "beet", 900, -16),
                new("tomatoes", "tomato", 300, 0) { IsTender = true },
                new("peppers", "pepper", 220, 7) { IsTender = true },
                new("basil", "basil", 250, 7) { IsTender = true },
                new("cucumbers", "cucumber", 100, 7) { IsTender = true },
                new("squash", "summer-squash", 120, 7) { IsTender = true },
            ],
        };

    private static Starter TwoHouses =>
        new()
        {
            Id = "two-houses",
            Name = "Two houses",
            About = "A market garden with a warm house for the tender crops and a cool one that opens later for the hardy crops",
            Question = "Do two houses carry the spring?",
            Try = "Half as many plants again of every crop, in the same two houses: what fills up first?",
            Answers = isImperial =>
                Usual() with
                {
                    Mats = "32",
                    MatTemperature = Either(isImperial, "75 F", "24 C"),
                    Table = "80",
                    Floor = "8",
                    Houses =
                    [
                        House(isImperial, "60", "18", "60 F", "15 C") with
                        {
                            Trays = "72",
                        },
                        House(isImperial, "48", "15", "50 F", "10 C") with
                        {
                            Trays = "48",
                        },
                    ],
                },
            Plan =
            [
                new("onions", "onion", 4000, -18) { Tray = "288-cell" },
                new("kale", "kale", 400, -23) { EveryDays = 21, Times = 2 },
                new("cabbage", "cabbage", 500, -23),
                new("lettuce", "lettuce", 400, -23) { EveryDays = 7, Times = 5 },
                new("broccoli", "broccoli", 400, -20) { EveryDays = 14, Times = 2 },
                new("beets", "beet", 1500, -16),
                new("chard", "chard", 250, -16),
                new("tomatoes", "tomato", 700, 0) { IsTender = true },
                new("peppers", "pepper", 500, 7) { IsTender = true },
                new("eggplants", "eggplant", 200, 7) { IsTender = true },
                new("basil", "basil", 500, 7) { IsTender = true },
                new("cucumbers", "cucumber", 250, 7)
                {
                    IsTender = true,
                    EveryDays = 14,
                    Times = 2,
                },
                new("squash", "summer-squash", 200, 7) { IsTender = true },
                new("melons", "melon", 200, 11) { IsTender = true },
            ],
        };

    private static Starter SharedSite =>
        new()
        {
            Id = "shared-site",
            Name = "Shared site",
            About = "A propagation house that three growers share: a vegetable crew, a flower grower and a seedling seller",
            Question = "Is there room for all three growers?",
            Try = "The seedling seller wants three times as many plants for the spring sale: who waits for them?",
            MoreOf = "Seedling seller",
            MoreTimes = 3,
            Answers = isImperial =>
                Usual() with
                {
                    Mats = "36",
                    MatTemperature = Either(isImperial, "75 F", "24 C"),
                    Table = "80",
                    Floor = "12",
                    Houses = [House(isImperial, "72", "22", "60 F", "15 C") with { Trays = "96" }],
                },
            Plan =
            [
                new("onions", "onion", 4000, -18) { Grower = "Vegetable crew", Tray = "288-cell" },
                new("lettuce", "lettuce", 400, -23)
                {
                    Grower = "Vegetable crew",
                    EveryDays = 7,
                    Times = 5,
                },
                new("broccoli", "broccoli", 400, -20)
                {
                    Grower = "Vegetable crew",
                    EveryDays = 14,
                    Times = 2,
                },
                new("tomatoes", "tomato", 600, 0) { IsTender = true, Grower = "Vegetable crew" },
                new("peppers", "pepper", 400, 7) { IsTender = true, Grower = "Vegetable crew" },
                new("squash", "winter-squash", 250, 9) { IsTender = true, Grower = "Vegetable crew" },
                new("snapdragons", "snapdragon", 1000, -18) { Grower = "Flower grower" },
                new("statice", "statice", 600, 2) { Grower = "Flower grower" },
                new("celosia", "celosia", 500, 7) { IsTender = true, Grower = "Flower grower" },
                new("zinnias", "zinnia", 700, 5)
                {
                    IsTender = true,
                    Grower = "Flower grower",
                    EveryDays = 14,
                    Times = 2,
                },
                new("sale-herbs", "parsley", 700, 5) { Grower = "Seedling seller" },
                new("sale-tomatoes", "tomato", 450, 0)
                {
                    IsTender = true,
                    Grower = "Seedling seller",
                    IsPottedUp = true,
                },
                new("sale-peppers", "pepper", 360, 5)
                {
                    IsTender = true,
                    Grower = "Seedling seller",
                    IsPottedUp = true,
                },
                new("sale-basil", "basil", 400, 5) { IsTender = true, Grower = "Seedling seller" },
            ],
        };

    private static Starter Container =>
        new()
        {
            Id = "container",
            Name = "Container of lights and racks",
            About = "A closed container with a germination chamber and four racks of sixteen trays under lights; the table is outside",
            Question = "Do four racks under lights raise the spring?",
            Try = "Half as many plants again of every crop on the same four racks: would a fifth rack do?",
            Answers = isImperial =>
                Usual() with
                {
                    Mats = "0",
                    Chamber = "24",
                    MatTemperature = "",
                    Table = "44",
                    Floor = "0",
                    Houses =
                    [
                        new HouseAnswers
                        {
                            IsUnderLights = true,
                            Night = Either(isImperial, "62 F", "16.5 C"),
                            Day = Either(isImperial, "70 F", "21 C"),
                            From = "all season",
                            Trays = "64",
                            UnitTrays = "16",
                        },
                    ],
                },
            Plan =
            [
                new("scallions", "scallion", 2400, -23),
                new("lettuce", "lettuce", 480, -23) { EveryDays = 7, Times = 6 },
                new("kale", "kale", 360, -18) { EveryDays = 21, Times = 2 },
                new("tomatoes", "tomato", 450, 0) { IsTender = true },
                new("peppers", "pepper", 432, 7) { IsTender = true },
                new("basil", "basil", 560, 7)
                {
                    IsTender = true,
                    EveryDays = 14,
                    Times = 2,
                },
                new("cucumbers", "cucumber", 240, 7) { IsTender = true },
            ],
        };

    private static FarmAnswers Usual() =>
        new()
        {
            Folder = "",
            WorkDays = "Mon, Tue, Wed, Thu, Fri, Sat",
            SlackDays = "6",
            Chamber = "0",
            Cover = "yes",
            OffMatEarly = "yes",
            LateDays = "7",
        };

    private static HouseAnswers House(bool isImperial, string feet, string metres, string fahrenheit, string celsius) =>
        new()
        {
            Shape = "hoop",
            Length = Either(isImperial, feet, metres),
            Width = Either(isImperial, "20", "6"),
            Layers = "2",
            Night = Either(isImperial, fahrenheit, celsius),
            From = "all season",
        };

    private static string Either(bool isImperial, string imperial, string metric) => isImperial ? imperial : metric;
}
