namespace BenchSim.Report.Writing;

/// <summary>The folder that a result of one kind is written to: its files, each with how it is made, under the rules of <see cref="OwnFolder"/>.</summary>
/// <param name="files">The files.</param>
internal sealed class ResultFolder<TResult>(params (string Name, Func<TResult, byte[]> Make)[] files)
{
    /// <summary>Refuses a place where something else stands, or that cannot be written; to be asked before the work.</summary>
    public void Check(string directory) => At(directory).Check();

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    public void Write(string directory, TResult result, CancellationToken cancel) =>
        At(directory)
            .Write(
                [],
                folder =>
                {
                    foreach (var (name, make) in files)
                    {
                        folder.Save(name, make(result));
                    }
                },
                cancel
            );

    private OwnFolder At(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        return new OwnFolder(directory, [.. files.Select(file => file.Name)]);
    }
}
