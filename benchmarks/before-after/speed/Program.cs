// Times what a warm process takes to play a scenario, the best of many goes: speed SCENARIO. Built against two trees it tells old from new.
using System.Diagnostics;
using System.Globalization;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study;
using BenchSim.Study.Compare;
#if NOW
using BenchSim.Study.Kept;
#endif

const int Repeats = 25;
string[] names = ["more-mats", "dense-tomatoes", "second-house", "cooler-nights"];
var plan = SeasonPlanner.Make(ScenarioFolder.Read(args[0]).Scenario!).Plan!;
(string, SeasonPlan)[] variants =
[
    .. names.Select(name => (name, VariantPlanner.Make(plan, ScenarioFolder.ReadVariant(args[0], name).Scenario!).Plan!)),
];
var options = new StudyOptions
{
    Seasons = 1000,
    Seed = 1,
    Threads = 2,
};
#if NOW
var kept = new KeptSeasons();
StudyRunner.Play(plan, options, null, CancellationToken.None, kept);
#endif
Row("1,000 seasons, two threads", _ => StudyRunner.Play(plan, options, null, CancellationToken.None));
Row("after a change of places alone", Moved);
Row("compare with four variants", _ => CompareRunner.Play(plan, variants, options, null, CancellationToken.None));

// Each go has places that no earlier one had.
void Moved(int go)
{
    var spaces = plan.Scenario.Spaces.Select((space, at) => at == 0 ? space with { Places = space.Places + go + 1 } : space);
    var moved = plan with { Scenario = plan.Scenario with { Spaces = [.. spaces] } };
#if NOW
    StudyRunner.Play(moved, options, null, CancellationToken.None, kept);
#else
    StudyRunner.Play(moved, options, null, CancellationToken.None);
#endif
}

static void Row(string what, Action<int> play)
{
    var best = double.PositiveInfinity;
    for (var go = 0; go < Repeats; go++)
    {
        var start = Stopwatch.GetTimestamp();
        play(go);
        best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {what, -34}{best, 8:0.0} ms"));
}
