namespace BenchSim.Cli.Tests;

/// <summary>Tests that change the folder of the whole process: no other test runs beside them.</summary>
[CollectionDefinition("Changes the current folder", DisableParallelization = true)]
public sealed class RunsAlone;
