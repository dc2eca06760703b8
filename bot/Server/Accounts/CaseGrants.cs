using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Who may see which case.</summary>
internal sealed class CaseGrants(AccountBook book)
{
    /// <summary>Lets a person into a case, as when they open it or were handed it.</summary>
    public void Let(Person person, string caseId)
    {
        if (book.HasAccounts && !person.SeesAllCases) book.Grant(caseId, person.Name);
    }

    /// <summary>Takes the right back that <see cref="Let"/> gave.</summary>
    /// <returns>False when the name had none.</returns>
    public bool TakeOut(string name, string caseId) => book.TakeBack(caseId, name);

    /// <summary>Whether a person may see and work on a case.</summary>
    public bool MaySee(Person person, string caseId) => person.SeesAllCases || book.MaySee(caseId, person.Name);

    /// <summary>The cases a person may see; null for all.</summary>
    public ImmutableHashSet<string>? Own(Person person) => person.SeesAllCases ? null : book.CasesOf(person.Name);

    /// <summary>Which cases of a list a person may see.</summary>
    public Func<string, bool> Seen(Person person)
    {
        if (person.SeesAllCases) return _ => true;
        var own = book.CasesOf(person.Name);
        return own.Contains;
    }
}
