using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Study.Tests.Kept;

/// <summary>
/// Every field of a plan tells it from others, but for those that are named here: a new field is taken to matter, unless it is added to
/// them.
/// </summary>
public class PlanWithoutPlacesTests
{
    private static readonly string[] s_blottedOut =
    [
        "Scenario.Name",
        "Scenario.Question",
        "Scenario.IsPlannedAnew",
        "Scenario.Units",
        "Scenario.Invest",
        "Scenario.Play",
        "Scenario.TrayTypes",
        "Scenario.Crops",
        "Scenario.Batches",
        "Scenario.Ranges",
        "Scenario.Supplies",
        "SeasonPlan.Warnings",
        "SeenWeather.ForecastFile",
        "SiteRules.Prices",
        "House.Name",
        "House.Heat",
        "Space.Name",
        "Space.Places",
        "Space.Changes",
        "Space.AislePlaces",
        "Space.UnitPlaces",
        "Space.PlacesNote",
        "Space.Power",
        "BatchOrder.ThousandSeeds",
        "BatchOrder.Note",
        "BatchOrder.Place",
        "Crop.Name",
        "Crop.Sources",
        "TrayType.Name",
        "TrayType.Sources",
    ];

    [Fact]
    public void Only_the_fields_named_do_not_tell_plans_apart()
    {
        SameArrays same = new();
        var plan = Plans.Small();
        var key = PlanWithoutPlaces.Of(plan, same);
        SortedSet<string> blotted = new(StringComparer.Ordinal);
        Each(plan, IsSame, blotted, changed => (SeasonPlan)changed);

        Assert.Equal(string.Join(' ', s_blottedOut.Order(StringComparer.Ordinal)), string.Join(' ', blotted));

        bool IsSame(SeasonPlan other)
        {
            try
            {
                return PlanWithoutPlaces.Of(other, same) == key;
            }
            catch (NullReferenceException)
            {
                // A blank record that is looked into has no arrays.
                return false;
            }
        }
    }

    [Fact]
    public void The_same_content_read_anew_is_the_same_plan()
    {
        SameArrays same = new();
        Assert.Equal(PlanWithoutPlaces.Of(Recorded(18), same), PlanWithoutPlaces.Of(Recorded(18), same));
        Assert.NotEqual(PlanWithoutPlaces.Of(Recorded(18), same), PlanWithoutPlaces.Of(Recorded(19), same));
    }

    // Changes each field of a record in turn, records and the first of each list inside too, and notes those whose change does not show.
    private static void Each(object record, Predicate<SeasonPlan> isSame, SortedSet<string> blotted, Func<object, SeasonPlan> whole)
    {
        foreach (var field in Fields(record.GetType()))
        {
            var value = field.GetValue(record);
            SeasonPlan With(object? other) => whole(Changed(record, field, other));
            if (Other(field.PropertyType, value) is { } other && isSame(With(other)))
            {
                blotted.Add($"{record.GetType().Name}.{field.Name}");
            }
            else if (value is not null && IsRecord(value.GetType()))
            {
                Each(value, isSame, blotted, With);
            }
            else if (value is IList { Count: > 0 } list && IsRecord(list[0]!.GetType()))
            {
                Each(list[0]!, isSame, blotted, changed => With(Replaced(value, changed)));
            }
        }
    }

    private static SeasonPlan Recorded(double highC) =>
        Plans.Small() with
        {
            Scenario = Plans.Small().Scenario with
            {
                Weather = new RecordedWeather(
                    [.. Enumerable.Range(0, 400).Select(day => new DailyWeather(Plans.FirstDay.AddDays(day), 4, highC, 0))],
                    null,
                    Guid.NewGuid().ToString()
                ),
            },
        };

    private static IEnumerable<PropertyInfo> Fields(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(field => field.CanWrite && field.GetIndexParameters().Length == 0);

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    private static object Changed(object record, PropertyInfo field, object? value)
    {
        var copy = record.GetType().GetMethod("<Clone>$")!.Invoke(record, [])!;
        field.SetValue(copy, value);
        return copy;
    }

    private static object Replaced(object array, object first) =>
        array.GetType().GetMethod("SetItem", [typeof(int), first.GetType()])!.Invoke(array, [0, first])!;

    // Another value of a field's type; null where there is none at hand.
    private static object? Other(Type type, object? value)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        return value switch
        {
            string text => text + "x",
            bool yes => !yes,
            int number => number + 1,
            long number => number + 1,
            double number => number + 0.5,
            DateOnly date => date.AddDays(1),
            TimeOnly time => time.AddMinutes(5),
            Enum choice => Enum.GetValues(type).Cast<Enum>().First(each => !each.Equals(choice)),
            IDictionary { Count: 0 } => Added(value, ["x", Blank(type.GetGenericArguments()[1])]),
            IList { Count: 0 } => Added(value, [Blank(type.GetGenericArguments()[0])]),
            IList => type.GetField("Empty")!.GetValue(null),
            null when type == typeof(string) => "x",
            _ when type.IsAbstract => null,
            // All zeros, as a blank one is.
            WorkSeconds => null,
            _ => Blank(type),
        };
    }

    private static object Added(object list, object[] item) =>
        list.GetType().GetMethod("Add", [.. item.Select(each => each.GetType())])!.Invoke(list, item)!;

    private static object Blank(Type type) => type == typeof(string) ? "x" : RuntimeHelpers.GetUninitializedObject(type);
}
