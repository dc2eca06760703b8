using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.Jobs;

/// <summary>What is written down about a job beside the walk: a fold of its log.</summary>
/// <param name="AtHand">The number of the unit the work is at; 1 until another is turned to.</param>
/// <param name="Change">What can be taken back next; null when nothing can.</param>
public sealed record Job(
    int AtHand, ImmutableArray<JobUnit> Units, ImmutableArray<JobPerson> People, ImmutableArray<JobNote> Notes,
    ImmutableArray<JobVisit> Visits, ImmutableArray<JobPhoto> Photos, ImmutableArray<JobHand> Hands,
    JobChange? Change = null)
{
    private static readonly Job Nothing = new(1, [], [], [], [], [], []);

    /// <summary>The unit the work is at; null while nothing is noted of it.</summary>
    public JobUnit? Unit => Units.FirstOrDefault(unit => unit.Number == AtHand);

    /// <summary>The job of a log. The first visit begins as the case is opened.</summary>
    public static Job Of(ImmutableArray<StoredEvent> log)
    {
        var job = log.IsEmpty ? Nothing : Nothing with { Visits = [new JobVisit(1, log[0].At, null, SpeakerOf(log))] };
        var standing = JobChange.Standing(log);
        return standing.Aggregate(job, (now, stored) => now.After(stored.Event, stored.At))
            with { Change = JobChange.Last(standing) };
    }

    private Job After(CaseEvent happened, DateTimeOffset at) => happened switch
    {
        UnitNoted unit => this with
        {
            Units = Put(Units,
                new JobUnit(unit.Unit, unit.Series, unit.Model, unit.Serial, unit.Installed, unit.Site, at, unit.By),
                one => one.Number),
        },
        UnitTurnedTo turned => this with { AtHand = turned.Unit },
        PersonNoted person => this with
        {
            People = Put(People, new JobPerson(person.Person, person.Part, person.Name, person.Phone, at, person.By),
                one => one.Number),
        },
        NoteWritten note => this with { Notes = Notes.Add(new JobNote(note.Text, at, note.By)) },
        PhotoTaken photo => this with
        {
            Photos =
                Photos.Add(new JobPhoto(photo.Hash, photo.Type, photo.Bytes, photo.Shows, photo.Unit, at, photo.By)),
        },
        PhotoDropped dropped => this with { Photos = [.. Photos.Where(photo => photo.Hash != dropped.Hash)] },
        TookPart part =>
            this with { Hands = [.. Hands.Where(hand => hand.Name != part.By), new JobHand(part.By, part.As)] },
        TakenOut gone => this with { Hands = [.. Hands.Where(hand => hand.Name != gone.Who)] },
        VisitBegun begun => this with { Visits = End(at).Add(new JobVisit(begun.Visit, at, null, begun.By)) },
        VisitEnded => this with { Visits = End(at) },
        _ => this,
    };

    private ImmutableArray<JobVisit> End(DateTimeOffset at) =>
        Visits is [.., { Ended: null } last] ? Visits.SetItem(Visits.Length - 1, last with { Ended = at }) : Visits;

    private static ImmutableArray<T> Put<T>(ImmutableArray<T> known, T anew, Func<T, int> number) =>
        [.. known.Where(one => number(one) != number(anew)).Append(anew).OrderBy(number)];

    private static string SpeakerOf(ImmutableArray<StoredEvent> log) =>
        log.Select(stored => stored.Event).OfType<Said>().FirstOrDefault()?.By ?? "";
}
