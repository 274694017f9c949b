using BenchSim.Report.Tables;

namespace BenchSim.Report.Writing;

/// <summary>
/// The folder that a result of one kind is written to: its files, each with how it is made, under the rules of <see cref="OwnFolder"/>.
/// </summary>
/// <param name="pictures">The pictures.</param>
/// <param name="tables">The tables.</param>
internal sealed class ResultFolder<TResult>(
    (string Name, Func<TResult, byte[]> Draw)[] pictures,
    (string Name, Func<TResult, CsvTable> Make)[] tables
)
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
                    foreach (var (name, draw) in pictures)
                    {
                        folder.Save(name, draw(result));
                    }

                    foreach (var (name, make) in tables)
                    {
                        folder.Save(name, make(result));
                    }
                },
                cancel
            );

    private OwnFolder At(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        return new OwnFolder(directory, [.. pictures.Select(file => file.Name), .. tables.Select(file => file.Name)]);
    }
}
