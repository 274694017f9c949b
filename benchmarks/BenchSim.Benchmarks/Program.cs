using BenchmarkDotNet.Running;
using BenchSim.Benchmarks.Season;

// "where SCENARIO" prints where the time of a season goes; anything else is BenchmarkDotNet's.
if (args is ["where", var scenario])
    WhereTimeGoes.Print(scenario, Console.Out);
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
