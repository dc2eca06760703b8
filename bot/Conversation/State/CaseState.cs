using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.State;

/// <summary>Where a case stands: nothing but the fold of its events.</summary>
public sealed record CaseState
{
    /// <summary>A case of which nothing is known.</summary>
    public static CaseState New { get; } = new();

    /// <summary>The version of the content the case began on; null before it is opened.</summary>
    public string? ContentVersion { get; init; }

    /// <summary>How many messages came in; never goes back.</summary>
    public int Turns { get; init; }

    /// <summary>Two letters (ISO 639-1); null until a language is chosen.</summary>
    public string? Language { get; init; }

    public string? Role { get; init; }

    public string? Series { get; init; }

    /// <summary>A display code that is not yet turned into a symptom.</summary>
    public string? Code { get; init; }

    public string? Look { get; init; }

    public ImmutableArray<ReportedSymptom> Symptoms { get; init; } = [];

    /// <summary>How the complaint was told whose symptom is asked for; null when plainly, or when none is.</summary>
    public Events.MannerHeard? Manner { get; init; }

    /// <summary>Symptoms that wait until the fault of the others is cured, in the order they were told.</summary>
    public ImmutableArray<string> PutOff { get; init; } = [];

    /// <summary>The mode the unit was said to run in; null when none was told.</summary>
    public string? Mode { get; init; }

    /// <summary>What a whole message told and nobody confirmed yet.</summary>
    public ImmutableArray<ToldItem> Unconfirmed { get; init; } = [];

    public ImmutableArray<SeenResult> Results { get; init; } = [];

    /// <summary>Results that a repair made stale: part of the record, no evidence any more.</summary>
    public ImmutableArray<SeenResult> Outdated { get; init; } = [];

    /// <summary>Checks left out, with the reason.</summary>
    public ImmutableSortedDictionary<string, CommandWord> PassedOver { get; init; } = Sorted.Map<CommandWord>();

    /// <summary>Readings of the check on hand that are in so far.</summary>
    public ImmutableArray<Events.GivenReading> Given { get; init; } = [];

    /// <summary>The access state that was confirmed last; null is the state in which a job begins.</summary>
    public string? Access { get; init; }

    public Approach? Approach { get; init; }

    /// <summary>Access states the unit cannot be brought into here.</summary>
    public ImmutableSortedSet<string> AccessRefused { get; init; } = Sorted.Set;

    public ChosenStep? Step { get; init; }

    public ImmutableArray<TriedRepair> Repairs { get; init; } = [];

    /// <summary>Repairs that cannot be made here.</summary>
    public ImmutableSortedSet<string> RepairsPassedOver { get; init; } = Sorted.Set;

    /// <summary>A repair that is made but not yet verified.</summary>
    public string? Unverified { get; init; }

    /// <summary>Results that contradict each other and were spoken of already.</summary>
    public ImmutableSortedSet<string> Accepted { get; init; } = Sorted.Set;

    /// <summary>
    /// Checks left out that were named once more: before a part is changed that they prove, or before the walk ends.
    /// </summary>
    public ImmutableSortedSet<string> GapsTold { get; init; } = Sorted.Set;

    /// <summary>Symptoms told with doubt that were asked about once more.</summary>
    public ImmutableSortedSet<string> DoubtsTold { get; init; } = Sorted.Set;

    /// <summary>Whether the trouble is gone, once it was denied; null as long as nobody denied it.</summary>
    public bool? IsGone { get; init; }

    /// <summary>
    /// The pages of the cautions that were told since the unit was last brought to another access state.
    /// </summary>
    public ImmutableSortedSet<string> Told { get; init; } = Sorted.Set;

    /// <summary>Repairs made on this unit before, the latest first.</summary>
    public ImmutableArray<EarlierWork> Earlier { get; init; } = [];

    /// <summary>Whether the person goes no further; the case is about to be closed.</summary>
    public bool IsLeft { get; init; }

    /// <summary>How the case ended; null while it is open.</summary>
    public string? ClosedHow { get; init; }

    /// <summary>The question that is open.</summary>
    public OpenQuestion? Question { get; init; }

    /// <summary>The last reply, to be said again on request.</summary>
    public Reply? LastReply { get; init; }

    /// <summary>The lists of troubles that were gone through since anything was entered, the last one last.</summary>
    internal ImmutableArray<OpenQuestion> Lists { get; init; } = [];

    /// <summary>Where the case stood before the last answer; null when there is nothing to take back.</summary>
    internal CaseState? Before { get; init; }

    /// <summary>Where the case stood when the message that is being folded came in.</summary>
    internal CaseState? AtMessage { get; init; }
}
