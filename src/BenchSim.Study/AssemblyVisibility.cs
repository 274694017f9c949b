using System.Runtime.CompilerServices;

// The counting behind a study is checked on its own: by hand-made seasons, and against published figures.
[assembly: InternalsVisibleTo("BenchSim.Study.Tests")]
[assembly: InternalsVisibleTo("Published")]
[assembly: InternalsVisibleTo("BenchSim.Benchmarks")]
