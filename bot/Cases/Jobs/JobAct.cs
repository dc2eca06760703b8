namespace DxAssistant.Cases.Jobs;

/// <summary>One thing to write down about a job. Numbers count from 1; null stands for a new one.</summary>
public abstract record JobAct
{
    private JobAct() { }

    /// <summary>Describes a unit, whole.</summary>
    public sealed record NoteUnit(int? Unit, string? Series, string? Model, string? Serial, DateOnly? Installed,
        string? Site) : JobAct;

    /// <summary>Goes on at another unit.</summary>
    public sealed record TurnToUnit(int Unit) : JobAct;

    /// <summary>Describes a person, whole.</summary>
    public sealed record NotePerson(int? Person, string Part, string Name, string? Phone) : JobAct;

    public sealed record WriteNote(string Text) : JobAct;

    /// <summary>Adds a photo whose bytes are kept already.</summary>
    public sealed record AddPhoto(string Hash, string Type, long Bytes, string Shows, int Unit) : JobAct;

    /// <summary>Takes a photo out again, for good.</summary>
    public sealed record DropPhoto(string Hash) : JobAct;

    /// <summary>Works on the case from here on.</summary>
    public sealed record TakePart(string As) : JobAct;

    /// <summary>Takes somebody out of a case who was let into it.</summary>
    public sealed record TakeOut(string Who) : JobAct;

    public sealed record BeginVisit : JobAct;

    public sealed record EndVisit : JobAct;

    /// <summary>Takes back what was written down last.</summary>
    /// <param name="Turn">Its turn: when something else was written down since, nothing is taken back.</param>
    public sealed record TakeBack(string Turn) : JobAct;
}
