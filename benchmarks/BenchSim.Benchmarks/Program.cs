using System.Globalization;
using BenchmarkDotNet.Running;
using BenchSim.Benchmarks.Page;
using BenchSim.Benchmarks.Season;
using BenchSim.Benchmarks.SideBySide;
using BenchSim.Benchmarks.Workbench;

// "where SCENARIO" prints where the time of a season goes, "sowings SCENARIO" how it grows with the sowings, "page [PROGRAM]" how fast the
// answer moves on the page of the workbench, "changes SCENARIO N" what memory a workbench takes over N changes, "side-by-side MODEL" times
// the models other engines play too; anything else is BenchmarkDotNet's.
switch (args)
{
    case ["where", var scenario]:
        WhereTimeGoes.Print(scenario, Console.Out);
        break;
    case ["sowings", var scenario]:
        ManySowings.Print(scenario, Console.Out);
        break;
    case ["page", .. var built]:
        await PageSpeed.PrintAsync(built is [var path] ? path : "", Console.Out);
        break;
    case ["changes", var scenario, var count]:
        await ManyChanges.PrintAsync(scenario, int.Parse(count, CultureInfo.InvariantCulture), Console.Out);
        break;
    case ["side-by-side", var model]:
        SideBySidePlay.Run(model);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(SpringBenchmark).Assembly).Run(args);
        break;
}
