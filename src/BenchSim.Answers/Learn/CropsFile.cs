using System.Collections.Immutable;
using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Folder;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Library;
using BenchSim.Folder.Shelves;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Learn;

/// <summary>What was written.</summary>
/// <param name="File">The file, as the user would write it.</param>
/// <param name="Crops">Crops of which it holds learned values.</param>
/// <param name="IsChanged">False where it held them already.</param>
public sealed record WrittenCrops(string File, ImmutableArray<string> Crops, bool IsChanged);

/// <summary>The text of crops.csv with what was learned.</summary>
/// <param name="Text">The text; null where there is none and nothing to write.</param>
/// <param name="Crops">Crops of which it holds learned values.</param>
/// <param name="IsChanged">False where it held them already.</param>
public sealed record TaughtCrops(string? Text, ImmutableArray<string> Crops, bool IsChanged);

/// <summary>The file crops.csv of a scenario folder, into which learned values go; what else stands in it stays.</summary>
/// <param name="directory">The folder; null for a scenario in memory.</param>
/// <param name="inputs">The files of the folder as they were read.</param>
internal sealed class CropsFile(string? directory, ImmutableArray<InputFile> inputs)
{
    private readonly InputFile? _before = inputs.FirstOrDefault(file =>
        string.Equals(file.Name, FileNames.Crops, StringComparison.Ordinal)
    );
    private readonly string _path = Path.Combine(directory ?? "", FileNames.Crops);

    /// <summary>Refuses where it cannot be written.</summary>
    public void Check()
    {
        if (directory is null)
        {
            throw new RefusedException("The scenario is in no folder, so there is no crops.csv to write. Name a folder.");
        }

        RefuseWorkbook();
        if (new FileInfo(_path).LinkTarget is not null || (File.Exists(_path) && !PlainFile.IsRegular(_path)))
        {
            throw new RefusedException(
                $"{PlainText.Quote(_path)} is a link or no regular file, and stays as it is. Put the file itself there."
            );
        }

        Refusing(() => TargetFile.CheckCanBeWritten(_path));
    }

    /// <summary>Writes what was learned.</summary>
    public WrittenCrops Write(LearnResult result, CancellationToken cancel)
    {
        var taught = Teach(result);
        if (taught.IsChanged)
        {
            Refusing(() => TargetFile.Write(_path, Encoding.UTF8.GetBytes(taught.Text!), RefuseChanged, cancel));
        }

        return new WrittenCrops(_path, taught.Crops, taught.IsChanged);
    }

    /// <summary>The file as it would be written; nothing is.</summary>
    public TaughtCrops Teach(LearnResult result)
    {
        RefuseWorkbook();
        ImmutableArray<CropValues> values =
        [
            .. result.Crops.Where(crop => CanStand(result, crop)).Select(crop => Values(result, crop)).OfType<CropValues>(),
        ];
        var text = _before is null ? null : Encoding.UTF8.GetString(_before.Bytes.AsSpan());
        if (values.IsEmpty)
        {
            return new TaughtCrops(text, [], false);
        }

        var edit = CropValues.Write(text, values);
        if (edit.Fault is { } fault)
        {
            throw new FaultsFoundException([fault]);
        }

        var isChanged = !string.Equals(edit.Text, text, StringComparison.Ordinal);
        if (isChanged)
        {
            RefuseBroken(edit.Text);
        }

        return new TaughtCrops(edit.Text, [.. values.Select(crop => crop.Name)], isChanged);
    }

    private void RefuseWorkbook()
    {
        var workbook = FileNames.WorkbookOf(FileNames.Crops);
        if (inputs.Any(file => string.Equals(file.Name, workbook, StringComparison.Ordinal)))
        {
            throw new RefusedException(
                $"The crops of {PlainText.Quote(directory ?? "the scenario")} are in the workbook {workbook}, which stays as it is. Save "
                    + $"it as {FileNames.Crops}, or type the values in from the table of this answer."
            );
        }
    }

    // A crop of an earlier season that the last folder does not have has no values there to put its own over.
    private static bool CanStand(LearnResult result, TaughtCrop crop)
    {
        var id = crop.Lessons.Crop.Id;
        return InForce(result, id) is not null || BuiltInLibrary.Crops.Any(row => string.Equals(row.Id, id, StringComparison.Ordinal));
    }

    private static Crop? InForce(LearnResult result, string id) =>
        result.Plan.Scenario.Crops.FirstOrDefault(crop => string.Equals(crop.Id, id, StringComparison.Ordinal));

    private static CropValues? Values(LearnResult result, TaughtCrop taught)
    {
        if (taught.Values.IsEmpty)
        {
            return null;
        }

        var (before, units) = (taught.Lessons.Crop, result.Plan.Scenario.Units);
        var inForce = InForce(result, before.Id) ?? before;
        var crop = taught.Values.Aggregate(inForce, (each, value) => value.Learned.Kind.With(each, value.Learned.Value.New));
        var cells = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var kind in LearnedKinds.All)
        {
            var isLearned = taught.Values.Any(value => value.Learned.Kind == kind);
            if (isLearned || (kind == LearnedKind.GrowthDays && !Equals(crop.DaysToReady, before.DaysToReady)))
            {
                cells[kind.Column()] = Written(crop, kind, units);
            }
        }

        var earlier = LearnedKinds.All.Select(kind => PriorCrop.LogOf(inForce, kind.Column())).OfType<OwnLog>().FirstOrDefault();
        ImmutableArray<ValueBefore> values =
        [
            .. LearnedKinds
                .All.Where(kind => cells.ContainsKey(kind.Column()))
                .Select(kind => new ValueBefore(kind.Column(), Written(before, kind, units), TrustOf(before, kind))),
            .. earlier?.Before.Where(value => !cells.ContainsKey(value.Column)) ?? [],
        ];
        var source = new OwnLog
        {
            Seasons = [.. result.Seasons.Select(season => season.Name)],
            Batches = taught.Lessons.Batches,
            Before = values,
            Others = earlier?.Others ?? OthersOf(inForce),
        };
        cells[CropFields.Source] = source.ToString();
        return new CropValues(before.Id, before.Name, cells.ToImmutable());
    }

    private static string Written(Crop crop, LearnedKind kind, UnitSystem units) =>
        CropFields.Table.Find(kind.Column())!.Write(crop, units);

    private static Season.Values.Trust TrustOf(Crop crop, LearnedKind kind) =>
        crop.Sources.GetValueOrDefault(kind.Column())?.Trust ?? Season.Values.Trust.Assumption;

    // What the row said of its values before any were learned.
    private static string OthersOf(Crop crop) =>
        crop.Sources.Values.FirstOrDefault(source => source is { Trust: Season.Values.Trust.User, Source.Length: > 0 })?.Source ?? "";

    // What is written must be read again: a row that another program left half open would take it in.
    private void RefuseBroken(string text)
    {
        var files = inputs.Where(file => !string.Equals(file.Name, FileNames.Crops, StringComparison.Ordinal));
        var reading = ScenarioFolder.ReadKept([.. files, InputFile.Of(FileNames.Crops, text)]);
        if (reading.Scenario is null)
        {
            throw new FaultsFoundException(reading.Faults)
            {
                Note = "With the values learned the folder would have these faults; nothing was written.",
            };
        }
    }

    private void RefuseChanged()
    {
        var now = File.Exists(_path) ? File.ReadAllBytes(_path) : null;
        if (now is null ? _before is not null : _before is null || !_before.Bytes.AsSpan().SequenceEqual(now))
        {
            throw new RefusedException($"{PlainText.Quote(_path)} was changed meanwhile and stays as it is. Try again.");
        }
    }

    private void Refusing(Action write)
    {
        try
        {
            write();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"{PlainText.Quote(_path)} could not be written: {failure.Message}");
        }
    }
}
