using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Folder.Variants;
using BenchSim.Report.Words;
using BenchSim.Season.Values;

namespace BenchSim.Workbench.Drafts;

/// <summary>The files of the folder: what is put into them, and what was changed in them outside.</summary>
internal sealed partial class Desk
{
    private const string Former = Journal.Folder + "/former";

    /// <summary>Why what was changed outside could not be taken into a try; null where it was.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Reads the files again, and takes in what was changed outside.</summary>
    public void LookOutside()
    {
        lock (_gate)
        {
            // Read with the desk held, or texts from before a try was put into the files could pass for a change made outside.
            TakeFiles(Folder.ReadTexts());
        }
    }

    /// <summary>Puts an end to a conflict with a file that was changed outside.</summary>
    /// <param name="id">The try.</param>
    /// <param name="file">The file.</param>
    /// <param name="mine">True to stay with the text of the try; false to take that of the file.</param>
    public NotMade? Settle(int id, string file, bool mine)
    {
        lock (_gate)
        {
            if (_state.Find(id) is not { } draft || !draft.Conflicts.Contains(file, StringComparer.Ordinal))
            {
                return null;
            }

            // The other conflicts of the try are found anew.
            var fault = Take(draft, file, mine ? draft.Now.Of(file) : _state.Files.Of(file), $"Took {file} as it was changed outside");
            TakeFiles(_state.Files, isForced: true);
            return fault;
        }
    }

    /// <summary>Puts a try into the files, each whole or not at all, with the former text kept.</summary>
    /// <param name="id">The try.</param>
    /// <returns>Why it was not done, or not to the end; null when it was.</returns>
    public NotMade? PutIntoFiles(int id)
    {
        lock (_gate)
        {
            TakeFiles(Folder.ReadTexts());
            if (ReadOnly is not null)
            {
                return new NotMade(ReadOnly, false);
            }

            if (_state.Find(id) is not { } draft)
            {
                return new NotMade("There is no such try.", false);
            }

            if (!draft.Conflicts.IsEmpty)
            {
                return Conflicting(draft);
            }

            return Write(draft) ?? DropPut(id);
        }
    }

    /// <summary>Keeps a try as a variant of the folder, as far as a variant can hold it. The try stays.</summary>
    /// <param name="id">The try.</param>
    /// <param name="name">Name of the variant.</param>
    /// <param name="said">What was done, and what a variant cannot hold; empty where it was not done.</param>
    /// <returns>Why it was not done; null when it was.</returns>
    public NotMade? KeepAsVariant(int id, string name, out string said)
    {
        said = "";
        lock (_gate)
        {
            TakeFiles(Folder.ReadTexts());
            if (_state.Find(id) is not { } draft)
            {
                return new NotMade("There is no such try.", false);
            }

            if (ReadOnly is not null || !draft.Conflicts.IsEmpty)
            {
                return ReadOnly is { } why ? new NotMade(why, false) : Conflicting(draft);
            }

            if (!ScenarioFolder.ReadKept(Folder.Files(draft.Now)).Faults.IsEmpty)
            {
                return new NotMade("Mend the faults of this try first, then keep it.", false);
            }

            var changes = ChangesAsVariant.Of(draft.From, draft.Now);
            var leftOut = changes.LeftOut.IsEmpty ? "" : $" A variant cannot hold {string.Join("; ", changes.LeftOut)}.";
            if (changes.Text.IsEmpty)
            {
                return new NotMade($"There is nothing to keep as a variant.{leftOut}", false);
            }

            var text = changes.Text.Write($"Kept from {PlainText.Short(draft.Name, LongestName)} of the workbench.");
            if (FaultOf(draft, text) is { } fault)
            {
                return new NotMade($"As a variant this cannot be: {fault.What}; {fault.Instead}.{leftOut}", false);
            }

            try
            {
                var target = new VariantTarget(Folder.Directory, name.Trim());
                target.Check();
                Folder.PathOf(FileNames.OfVariant(name.Trim()));
                target.Write(text, CancellationToken.None);
            }
            catch (Exception failure) when (failure is RefusedException or IOException or UnauthorizedAccessException)
            {
                return failure is RefusedException ? new NotMade(failure.Message, false) : Refused(failure);
            }

            said = $"Kept as {FileNames.OfVariant(name.Trim())}.{leftOut}";
            return null;
        }
    }

    private Fault? FaultOf(Draft draft, string text)
    {
        const string Name = "kept";
        var reading = ScenarioFolder.ReadKept([.. Folder.Files(draft.From), InputFile.Of(FileNames.OfVariant(Name), text)], variant: Name);
        return reading.Faults.IsEmpty ? null : reading.Faults[0];
    }

    private static NotMade Conflicting(Draft draft) =>
        new($"{draft.Conflicts[0]} was changed outside too. Choose which of the two stands first.", true);

    private NotMade? Write(Draft draft)
    {
        try
        {
            Keep(draft.Changed);
            foreach (var file in draft.Changed.Where(file => draft.Now.ContainsKey(file)))
            {
                // An editor may have saved it since it was read.
                if (!string.Equals(Folder.TextOf(file), draft.From.Of(file), StringComparison.Ordinal))
                {
                    return new NotMade($"{file} was changed outside at this moment. Look at it, then put the try in again.", true);
                }

                Folder.Write(file, draft.Now[file]);
            }

            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Refused(failure);
        }
        finally
        {
            TakeFiles(Folder.ReadTexts());
        }
    }

    private NotMade? DropPut(int id) =>
        Add(new Entry(Deed.Drop, id)) is { } fault
            ? new NotMade($"The files have it now, but the try stays in the list. {fault.Why}", fault.IsConflict)
            : null;

    private void TakeFiles(ImmutableSortedDictionary<string, string> texts, bool isForced = false)
    {
        var beside = Folder.ChangesBeside();
        var isNew = beside != _state.Beside || !Texts.Differing(_state.Files, texts).IsEmpty;
        var isWaiting = _state.Tries.Any(draft => !Texts.Differing(draft.From, texts).All(draft.Conflicts.Contains)) || Trouble is not null;
        if (!isNew && !isForced && !isWaiting)
        {
            return;
        }

        var (before, trouble) = (_state.Tries, (string?)null);
        _state = _state with { Files = texts, Beside = beside };
        foreach (var draft in before)
        {
            // A file that is as it was again is in no conflict any more.
            var differing = Texts.Differing(draft.From, texts);
            SetConflicts(draft.Id, [.. draft.Conflicts.Where(differing.Contains)]);
            foreach (var file in differing)
            {
                trouble = TakeFile(draft.Id, file, texts.Of(file)) ?? trouble;
            }
        }

        // What the disk refuses to take in is tried again each time, and told once.
        if (isNew || isForced || before != _state.Tries || !string.Equals(trouble, Trouble, StringComparison.Ordinal))
        {
            _state = _state with { Revision = _state.Revision + 1 };
            Trouble = trouble;
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }

    private string? TakeFile(int id, string file, string? theirs)
    {
        var draft = _state.Find(id)!;
        var (from, mine) = (draft.From.Of(file), draft.Now.Of(file));
        var isOneChange = string.Equals(mine, theirs, StringComparison.Ordinal) || string.Equals(mine, from, StringComparison.Ordinal);
        var merged =
            isOneChange ? theirs
            : from is null || mine is null || theirs is null ? null
            : LineMerge.Of(from, mine, theirs);
        if (merged is not null || isOneChange)
        {
            var others = draft.Conflicts.Remove(file, StringComparer.Ordinal);
            var fault = Take(draft, file, merged, $"Took in what was changed in {file} outside");
            SetConflicts(id, fault is null ? others : draft.Conflicts);
            return fault is null ? null : $"{file} was changed outside, and a try could not take that in. {fault.Why}";
        }

        SetConflicts(id, [.. draft.Conflicts.Append(file).Distinct(StringComparer.Ordinal)]);
        return null;
    }

    private NotMade? Take(Draft draft, string file, string? text, string what)
    {
        var step = new Entry(Deed.Step, draft.Id) { Say = what, Splices = Splice.Between(draft.Now, draft.Now.With(file, text)) };
        var from = new Entry(Deed.From, draft.Id) { Files = draft.From.With(file, _state.Files.Of(file)) };
        return step.Splices!.Value.IsEmpty ? Add(from) : Add(step, from);
    }

    private void SetConflicts(int id, ImmutableArray<string> conflicts)
    {
        if (_state.Find(id) is { } draft && !draft.Conflicts.SequenceEqual(conflicts, StringComparer.Ordinal))
        {
            _state = _state with { Tries = _state.Tries.Replace(draft, draft with { Conflicts = conflicts }) };
        }
    }

    // Numbered, so that none writes over another.
    private void Keep(ImmutableArray<string> files)
    {
        var number = 1;
        while (Directory.Exists(Folder.PathOf($"{Former}/{number:0000}")))
        {
            number++;
        }

        Directory.CreateDirectory(Folder.PathOf($"{Former}/{number:0000}"));
        foreach (var file in files)
        {
            if (_state.Files.Of(file) is { } text)
            {
                Folder.Write($"{Former}/{number:0000}/{file}", text);
            }
        }
    }
}
