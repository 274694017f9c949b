using System.Runtime.CompilerServices;

// A played season's numbers are written by the player alone; the tests beside it, and those of the counting that reads it, write them by
// hand.
[assembly: InternalsVisibleTo("BenchSim.Season.Tests")]
[assembly: InternalsVisibleTo("BenchSim.Study.Tests")]
[assembly: InternalsVisibleTo("BenchSim.Twin.Tests")]
