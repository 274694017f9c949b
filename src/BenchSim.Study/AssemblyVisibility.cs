using System.Runtime.CompilerServices;

// The counting behind a study is checked on its own: by hand-made seasons, and against published figures.
[assembly: InternalsVisibleTo("BenchSim.Study.Tests")]
[assembly: InternalsVisibleTo("Published")]
[assembly: InternalsVisibleTo("BenchSim.Benchmarks")]

// Levelling is a study in a project of its own, so that its solver is loaded for nothing else.
[assembly: InternalsVisibleTo("BenchSim.Level")]
[assembly: InternalsVisibleTo("BenchSim.Level.Tests")]
