using System.Globalization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Cases.Jobs;

/// <summary>What may be written down about a job, and in what form. Pure but for the day, which is told.</summary>
/// <param name="library">The pages; null where there are none, and then no serial number is checked.</param>
/// <param name="today">The day, UTC.</param>
public sealed class JobRules(Library? library, DateOnly today)
{
    /// <summary>The longest note, in characters.</summary>
    public const int LongestNote = 2000;

    /// <summary>The longest of all other fields, in characters.</summary>
    public const int LongestField = 200;

    private const int MostUnits = 20;
    private const int MostPeople = 20;
    private const int MostPhotos = 40;
    private static readonly DateOnly Earliest = new(1980, 1, 1);

    /// <summary>What people may have to do with a job.</summary>
    public static IReadOnlyList<string> Parts { get; } = ["customer", "owner", "technician", "contact"];

    /// <summary>What photos may show.</summary>
    public static IReadOnlyList<string> Shown { get; } = ["nameplate", "wiring", "part", "site", "other"];

    /// <returns>What is appended to the log, or why nothing is.</returns>
    public (AsideEvent? Event, JobAnswer.Refused? Why) Decide(Job job, JobAct act, string by) => act switch
    {
        JobAct.NoteUnit unit => Unit(job, unit, by),
        JobAct.TurnToUnit turn => job.Units.Any(unit => unit.Number == turn.Unit)
            ? (new UnitTurnedTo(by, turn.Unit), null) : No("There is no such unit in this job."),
        JobAct.NotePerson person => Person(job, person, by),
        JobAct.WriteNote note => Clean(note.Text) is not { } text ? No("The note is empty.")
            : text.Length > LongestNote ? No(Long("A note", LongestNote)) : (new NoteWritten(by, text), null),
        JobAct.AddPhoto photo => Add(job, photo, by),
        JobAct.DropPhoto drop => job.Photos.Any(photo => photo.Hash == drop.Hash)
            ? (new PhotoDropped(by, drop.Hash), null) : No("There is no such photo in this job."),
        JobAct.TakePart part => job.Hands.Contains(new JobHand(by, part.As))
            ? No("That is known already.")
            : (new TookPart(by, part.As), null),
        JobAct.TakeOut gone => job.Hands.Any(hand => hand.Name == gone.Who)
            ? (new TakenOut(by, gone.Who), null)
            : No("They have no part in it."),
        JobAct.BeginVisit => (new VisitBegun(by, job.Visits.Length + 1), null),
        JobAct.EndVisit => job.Visits is [.., { Ended: null } open]
            ? (new VisitEnded(by, open.Number), null) : No("No visit is going on."),
        JobAct.TakeBack back => job.Change?.Turn == back.Turn
            ? (new AsideTakenBack(by, back.Turn), null)
            : No("Something else was written down since. Look at it first; nothing was taken back."),
        _ => throw new ArgumentException($"no such act: {act.GetType().Name}", nameof(act)),
    };

    private (AsideEvent?, JobAnswer.Refused?) Unit(Job job, JobAct.NoteUnit unit, string by)
    {
        int last = job.Units.IsEmpty ? 0 : job.Units[^1].Number;
        if (unit.Unit is { } number && (number < 1 || number > Math.Max(1, last)))
            return No("There is no such unit in this job.");
        if (unit.Unit is null && last >= MostUnits) return No(Most("units", MostUnits));
        if (unit.Series is { } series && library is not null && !library.Series.ContainsKey(series))
            return No("There is no such series on the pages.");
        if (unit.Installed is { } day && (day < Earliest || day > today.AddDays(1)))
            return No("The day of installation is not a day that was.");
        if (TooLong(unit.Series, unit.Model, unit.Serial, unit.Site)) return No(Long("A field", LongestField));
        var (serial, meant, wrong) = Serial(Clean(unit.Serial), unit.Series);
        return wrong is not null
            ? (null, new JobAnswer.Refused(wrong, meant))
            : (new UnitNoted(by, unit.Unit
                ?? last + 1, unit.Series, Clean(unit.Model), serial, unit.Installed, Clean(unit.Site)), null);
    }

    private (string? Serial, string? Meant, string? Wrong) Serial(string? typed, string? series)
    {
        if (typed is null) return (null, null, null);
        if (SerialPattern.Bare(typed).Length == 0) return (null, null, "A serial number has letters or digits.");
        if (library is null) return (typed.ToUpperInvariant(), null, null);
        return new SerialBook(library).Check(typed, series) switch
        {
            SerialAnswer.Fits fits => (fits.Serial, null, null),
            SerialAnswer.OfAnother other when series is null => (other.Serial, null, null),
            SerialAnswer.OfAnother other => (null, null,
                $"{other.Serial} is a serial number of the {Title(other.Series)}, not of the {Title(series)}. Check the series, or the number."),
            SerialAnswer.Wrong wrong => (null, wrong.Meant, Wrong(typed, wrong, Title(series!))),
            _ => (typed.ToUpperInvariant(), null, null),
        };
    }

    private string Title(string series) => library!.Series[series].Title.Text;

    private static string Wrong(string typed, SerialAnswer.Wrong wrong, string title)
    {
        int had = SerialPattern.Bare(typed).Length, wanted = SerialPattern.Bare(wrong.Example).Length;
        string how = had == wanted ? "This one has a letter or a digit in the wrong place."
            : string.Create(CultureInfo.InvariantCulture, $"This one has {had} letters and digits, not {wanted}.");
        return $"A serial number of the {title} looks like {wrong.Example}. {how}"
            + (wrong.Meant is { } meant ? $" Was it {meant}?" : "");
    }

    private static (AsideEvent?, JobAnswer.Refused?) Person(Job job, JobAct.NotePerson person, string by)
    {
        int last = job.People.IsEmpty ? 0 : job.People[^1].Number;
        if (person.Person is { } number && (number < 1 || number > last))
            return No("There is no such person in this job.");
        if (person.Person is null && last >= MostPeople) return No(Most("people", MostPeople));
        if (!Parts.Contains(person.Part)) return No($"Say what the person is: {string.Join(", ", Parts)}.");
        if (TooLong(person.Name, person.Phone)) return No(Long("A field", LongestField));
        return Clean(person.Name) is { } name
            ? (new PersonNoted(by, person.Person ?? last + 1, person.Part, name, Clean(person.Phone)), null)
            : No("The name is empty.");
    }

    private static (AsideEvent?, JobAnswer.Refused?) Add(Job job, JobAct.AddPhoto photo, string by)
    {
        if (!Shown.Contains(photo.Shows)) return No($"Say what the photo shows: {string.Join(", ", Shown)}.");
        if (photo.Unit != 1 && job.Units.All(unit => unit.Number != photo.Unit))
            return No("There is no such unit in this job.");
        if (job.Photos.Any(known => known.Hash == photo.Hash)) return No("This photo is in the job already.");
        return job.Photos.Length >= MostPhotos
            ? No(Most("photos", MostPhotos))
            : (new PhotoTaken(by, photo.Hash, photo.Type, photo.Bytes, photo.Shows, photo.Unit), null);
    }

    private static string? Clean(string? text) => SaidWords.Clean(text ?? "") is { Length: > 0 } clean ? clean : null;

    private static bool TooLong(params ReadOnlySpan<string?> fields)
    {
        foreach (string? field in fields) if (field?.Length > LongestField) return true;
        return false;
    }

    private static string Long(string what, int most) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} has at most {most} characters. Nothing was written down.");

    private static string Most(string what, int most) =>
        string.Create(CultureInfo.InvariantCulture, $"A job has at most {most} {what}. Open another one.");

    private static (AsideEvent?, JobAnswer.Refused?) No(string why) => (null, new JobAnswer.Refused(why));
}
