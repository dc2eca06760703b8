using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Jobs;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Server.Jobs;

/// <summary>What a person learns of the cases of others by a serial number, and the audit line of it.</summary>
internal sealed class SerialLook(CaseGrants grants, AccountBook book, SerialPace pace)
{
    public EarlierSight Of(Person person, string? serial)
    {
        if (person.SeesAllCases || serial is null) return EarlierSight.Whole;
        bool may = pace.May(person.Name, serial);
        if (!may) book.Note(person.Name, "was shown nothing for too many serial numbers", serial);
        return new EarlierSight(id => grants.MaySee(person, id), may);
    }

    /// <param name="serial">By which something of another's case was told; null when nothing was.</param>
    public void Note(Person person, string? serial)
    {
        if (serial is not null) book.Note(person.Name, "was told earlier work of others on serial", serial);
    }
}
