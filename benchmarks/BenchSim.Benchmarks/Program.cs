using BenchmarkDotNet.Running;
using BenchSim.Benchmarks.Season;
using BenchSim.Benchmarks.SideBySide;

// "where SCENARIO" prints where the time of a season goes, "side-by-side MODEL" times the models other engines play too; anything else is BenchmarkDotNet's.
switch (args)
{
    case ["where", var scenario]:
        WhereTimeGoes.Print(scenario, Console.Out);
        break;
    case ["side-by-side", var model]:
        SideBySidePlay.Run(model);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}
