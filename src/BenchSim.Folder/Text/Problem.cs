namespace BenchSim.Folder.Text;

/// <summary>What is wrong with a text, still without its place.</summary>
/// <param name="What">What is wrong, to follow the name of the column or key.</param>
/// <param name="Instead">What would be right.</param>
internal sealed record Problem(string What, string Instead);
