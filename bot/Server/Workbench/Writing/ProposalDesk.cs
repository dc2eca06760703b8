using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Takes proposals and says how they stand. Never writes a page.</summary>
internal sealed class ProposalDesk(PageDesk pages, ProposalStore store, AccountBook book, TimeProvider clock,
    string? root)
{
    public const int MostPages = 60;
    public const int LongestNote = 2_000;

    /// <summary>Characters of all pages of a proposal, at most.</summary>
    public const int MostCharacters = 500_000;

    /// <summary>
    /// Proposals of one person that may wait at a time, those of the last day that were taken back included.
    /// </summary>
    public const int MostWaiting = 100;

    public ImmutableArray<Proposal> All() => store.All();

    public Proposal? Find(int number) => store.Find(number);

    /// <summary>Hands pages in.</summary>
    /// <param name="note">What it is for.</param>
    /// <param name="mark">
    /// New for each thing to be handed in; with one that was used, what it was used for is given again.
    /// </param>
    public async Task<HandedIn> HandInAsync(Person person, string note, IReadOnlyList<PageInHand> written, string mark,
        CancellationToken cancel)
    {
        if (store.All().FirstOrDefault(each => each.Mark == mark) is { } earlier) return new HandedIn.Kept(earlier);
        PageDesk.Tried stands = await pages.StandsAsync(cancel);
        if (Problem(note, written, stands.Folder) is { } problem) return Refuse(problem);
        ImmutableArray<string> overtaken = [.. written.Where(
            page => page.Base != PageMark.Of(stands.Folder.File(page.Path)?.Text)).Select(page => page.Path)];
        if (!overtaken.IsEmpty) return new HandedIn.Overtaken(overtaken);
        if (written.FirstOrDefault(page => page.Text == stands.Folder.File(page.Path)?.Text) is { } same)
            return Refuse($"Nothing is changed on {same.Path}.");
        if (store.All().Count(each => each.By == person.Name && Waits(each, stands.Folder)) >= MostWaiting)
            return new HandedIn.Refused(StatusCodes.Status409Conflict,
                $"{MostWaiting} of your proposals are waiting: have some of them reviewed first.");
        PageDesk.Tried tried = await pages.TryAsync(written, cancel);
        return Keep(person, note, written, mark, stands.Folder, tried.Found([.. written.Select(page => page.Path)])
            .Count(found => found.Severity == Severity.Error));
    }

    /// <summary>How a proposal stands against the pages.</summary>
    public static Standing Stands(Proposal proposal, ContentFolder folder)
    {
        if (proposal.TakenBackAt is not null) return Standing.TakenBack;
        if (proposal.Pages.All(page => folder.File(page.Path)?.Text == page.After)) return Standing.InPlace;
        return proposal.Pages.All(page => folder.File(page.Path)?.Text == page.Before)
            ? Standing.Fits
            : Standing.Overtaken;
    }

    /// <summary>Whether a person may take a proposal back: their own, or any for who keeps the accounts.</summary>
    public static bool MayTakeBack(Person person, Proposal proposal) =>
        person.Scopes is null && (proposal.By == person.Name || (person.Roles & AccountRoles.Administrator) != 0);

    /// <summary>Takes a proposal back; nothing happens when it was already.</summary>
    public Proposal TakeBack(Person person, Proposal proposal)
    {
        if (proposal.TakenBackAt is not null) return proposal;
        Proposal taken = proposal with { TakenBackAt = clock.GetUtcNow(), TakenBackBy = person.Name };
        store.TakeBack(taken);
        Note(person, "took back proposal", proposal);
        return taken;
    }

    /// <summary>The proposal as a file.</summary>
    public string Patch(Proposal proposal) => PatchFile.Write(proposal, PatchFile.PlaceOf(root!), path =>
        pages.Raw(path) is { } raw && Normal(raw) == proposal.Pages.First(page => page.Path == path).Before
            ? raw
            : proposal.Pages.First(page => page.Path == path).Before);

    private HandedIn Keep(Person person, string note, IReadOnlyList<PageInHand> written, string mark,
        ContentFolder folder, int errors)
    {
        if (written.FirstOrDefault(page => folder.File(page.Path) is not null
            && pages.Raw(page.Path) is null) is { } strange)
            return Refuse(
                $"{strange.Path} holds bytes that are no text: whoever keeps the pages has to mend it first.");
        Proposal kept = store.Add(mark, number =>
        {
            var made = new Proposal(
                number, person.Name, clock.GetUtcNow(), note.Trim(),
                [.. written.OrderBy(page => page.Path, StringComparer.Ordinal)
                    .Select(page => new ProposedPage(page.Path, folder.File(page.Path)?.Text, page.Text))], errors)
                    {
                        Mark = mark,
                    };
            return (made, Patch(made));
        });
        Note(person, "handed in proposal", kept);
        return new HandedIn.Kept(kept);
    }

    private void Note(Person person, string did, Proposal proposal)
    {
        if (book.HasAccounts)
            book.Note(person.Name, did,
                $"{proposal.Number} {string.Join(' ', proposal.Pages.Take(3).Select(page => page.Path))}");
    }

    // One that was taken back is kept too: handing in and taking back all day would fill the disk.
    private bool Waits(Proposal proposal, ContentFolder folder) => Stands(proposal, folder) switch
    {
        Standing.InPlace => false,
        Standing.TakenBack => proposal.At > clock.GetUtcNow() - TimeSpan.FromDays(1),
        _ => true,
    };

    private static string? Problem(string note, IReadOnlyList<PageInHand> written, ContentFolder folder)
    {
        if (written.Count is 0 or > MostPages) return $"Hand in 1 to {MostPages} pages at a time.";
        if (note.Trim().Length is 0 or > LongestNote)
            return $"Say in a few words what the change is for, {LongestNote} characters at most.";
        if (PageRules.StrangeIn(note) is { } strange) return strange;
        if (written.Sum(page => (long)(page.Text?.Length ?? 0)) > MostCharacters)
            return $"A proposal has at most {MostCharacters} characters: hand in fewer pages at a time.";
        if (written.Select(page => page.Path).Distinct(StringComparer.Ordinal).Count() < written.Count)
            return "One page is there twice.";
        return written.Select(page => PageRules.ProblemWithPath(page.Path, folder)
            ?? (page.Text is { } words && PageRules.ProblemWithText(words) is { } text ? $"{page.Path}: {text}" : null))
            .FirstOrDefault(problem => problem is not null);
    }

    private static string Normal(string raw) => ContentFolder.Of([new ContentFile("page.md", raw)]).Pages[0].Text;

    private static HandedIn.Refused Refuse(string line) => new(StatusCodes.Status400BadRequest, line);
}
