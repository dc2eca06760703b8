using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>
/// Keeps proposals in a folder: a patch for whoever reviews them, and below <c>kept</c> what the patch was made of.
/// </summary>
/// <param name="folder">Null keeps them while the program runs.</param>
internal sealed class ProposalStore(string? folder)
{
    private const string Patch = ".patch";

    private readonly Lock gate = new();
    private readonly SortedDictionary<int, (DateTime Written, Proposal Proposal)> known = [];

    /// <summary>All proposals, newest first.</summary>
    public ImmutableArray<Proposal> All()
    {
        lock (gate)
        {
            Refresh();
            return [.. known.Values.Select(each => each.Proposal).Reverse()];
        }
    }

    /// <summary>The proposal of a number; null when there is none.</summary>
    public Proposal? Find(int number) => All().FirstOrDefault(proposal => proposal.Number == number);

    /// <summary>Keeps a proposal under the next number; it is on disk before this returns.</summary>
    /// <param name="mark">One that was kept with it before is given again.</param>
    /// <param name="make">Makes the proposal of its number, and its patch.</param>
    public Proposal Add(string mark, Func<int, (Proposal Proposal, string Patch)> make)
    {
        lock (gate)
        {
            Refresh();
            if (known.Values.FirstOrDefault(each => each.Proposal.Mark == mark).Proposal is { } earlier) return earlier;
            (Proposal proposal, string patch) = make(NextNumber());
            // The patch first: one that was cut short before its record was never acknowledged, and its number is not
            // used again.
            if (folder is not null) Write(PathOf(proposal.Number) + Patch, patch);
            Keep(proposal);
            return proposal;
        }
    }

    /// <summary>Takes a proposal back: its patch goes, what it was made of stays.</summary>
    public void TakeBack(Proposal proposal)
    {
        lock (gate)
        {
            Keep(proposal);
            if (folder is not null) File.Delete(PathOf(proposal.Number) + Patch);
        }
    }

    private void Keep(Proposal proposal)
    {
        if (folder is not null) Write(RecordOf(proposal.Number), JsonSerializer.Serialize(proposal));
        known[proposal.Number] =
            (folder is null ? default : File.GetLastWriteTimeUtc(RecordOf(proposal.Number)), proposal);
    }

    private void Refresh()
    {
        if (folder is null || !Directory.Exists(Kept)) return;
        FileInfo[] files = [.. new DirectoryInfo(Kept).EnumerateFiles("*.json").Where(file => NumberOf(file.Name) > 0)];
        foreach (int gone in known.Keys.Except(files.Select(file => NumberOf(file.Name))).ToArray()) known.Remove(gone);
        foreach (FileInfo file in files)
        {
            int number = NumberOf(file.Name);
            if (known.TryGetValue(number, out var old) && old.Written == file.LastWriteTimeUtc) continue;
            if (Read(file.FullName) is { } proposal) known[number] = (file.LastWriteTimeUtc, proposal);
        }
    }

    // A record somebody broke by hand hides that proposal alone.
    private static Proposal? Read(string path)
    {
        try
        {
            return JsonSerializer.Deserialize<Proposal>(File.ReadAllText(path)) is { Pages.IsDefaultOrEmpty: false,
                By: not null, Note: not null } proposal ? proposal : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private int NextNumber() => 1 + known.Keys
        .Concat(folder is null || !Directory.Exists(folder) ? [] : Directory.EnumerateFiles(folder)
            .Concat(Directory.Exists(Kept) ? Directory.EnumerateFiles(Kept) : []).Select(NumberOf))
        .DefaultIfEmpty().Max();

    private static int NumberOf(string file) =>
        int.TryParse(Path.GetFileName(file).Split('.')[0], NumberStyles.None, CultureInfo.InvariantCulture,
            out int number) ? number : 0;

    private string Kept => Path.Combine(folder!, "kept");

    private string PathOf(int number) => Path.Combine(folder!, number.ToString("0000", CultureInfo.InvariantCulture));

    private string RecordOf(int number) =>
        Path.Combine(Kept, number.ToString("0000", CultureInfo.InvariantCulture) + ".json");

    // Whole or not at all, and through to the disk.
    private static void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        string unfinished = path + ".unfinished";
        using (var file = new FileStream(unfinished, FileMode.Create, FileAccess.Write))
        {
            file.Write(new UTF8Encoding(false).GetBytes(text));
            file.Flush(flushToDisk: true);
        }

        File.Move(unfinished, path, overwrite: true);
    }
}
