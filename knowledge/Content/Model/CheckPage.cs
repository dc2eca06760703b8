using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One thing to do at the unit to learn something.</summary>
/// <param name="SaidAs">What people call the thing that is measured, when they give its readings unasked.</param>
/// <param name="Calculation">The judge of the readings; null when it is a matter of looking.</param>
/// <param name="Pictures">How it is done, drawn.</param>
/// <param name="Readings">Empty without a calculation.</param>
/// <param name="Outcomes">In the order of the check in the graph.</param>
/// <param name="OwnersOnly">
/// True when it is asked of owners alone: a technician has better ways to learn the same.
/// </param>
/// <param name="Stop">Signs of danger: the outcomes at which an owner stops; empty for most checks.</param>
/// <param name="After">
/// The checks that come before this one, as far as they can be done where the person stands.
/// </param>
/// <param name="Series">The series it can be done on; empty means all.</param>
public sealed record CheckPage(
    CheckId Id,
    Passage Title,
    Passage Ask,
    ImmutableArray<Passage> How,
    ImmutableArray<PagePicture> Pictures,
    ImmutableArray<Passage> SaidAs,
    string? Calculation,
    ImmutableArray<ReadingField> Readings,
    ImmutableSortedDictionary<string, ExpectedInput> Expected,
    ImmutableArray<AnswerOption> Outcomes,
    bool OwnersOnly,
    ImmutableSortedSet<OutcomeId> Stop,
    ImmutableArray<CheckId> After,
    ImmutableSortedSet<string> Series,
    ImmutableArray<CautionPage> Cautions,
    ImmutableArray<Source> Sources)
{
    /// <summary>
    /// The access state in which the unit stands once the check has a result; null when that is where it was done.
    /// </summary>
    public AccessId? Leaves { get; init; }

    /// <summary>
    /// Those of <see cref="Stop"/> at which gas may be in the air: no switch is touched, no flame lit.
    /// </summary>
    public ImmutableSortedSet<OutcomeId> StopGas { get; init; } = [];

    /// <summary>
    /// Those of <see cref="Stop"/> at which water may be live: neither it nor what is plugged in there is touched.
    /// </summary>
    public ImmutableSortedSet<OutcomeId> StopWet { get; init; } = [];

    /// <summary>
    /// Those of <see cref="Stop"/> at which metal may be live: nothing of the unit is touched, and it is switched off
    /// in the panel.
    /// </summary>
    public ImmutableSortedSet<OutcomeId> StopShock { get; init; } = [];

    /// <summary>Outcomes at which the unit stays off: whoever may not look for the cause is led no further.</summary>
    public ImmutableSortedSet<OutcomeId> LeaveOff { get; init; } = [];

    /// <summary>What danger one of <see cref="Stop"/> tells of.</summary>
    public DangerKind DangerOf(OutcomeId sign) => StopGas.Contains(sign) ? DangerKind.Gas
        : StopWet.Contains(sign) ? DangerKind.Water
        : StopShock.Contains(sign) ? DangerKind.Shock
        : DangerKind.Fire;

    /// <summary>The symptoms at which the check makes no sense: nobody feels the air of a unit that is dead.</summary>
    public ImmutableSortedSet<SymptomId> NotAt { get; init; } = [];

    /// <summary>
    /// The modes in which it is done; told that the trouble shows in another, nobody is asked for it. Empty means all.
    /// </summary>
    public ImmutableSortedSet<string> Modes { get; init; } = [];

    /// <summary>Whether it says something of a trouble that shows in a mode.</summary>
    /// <param name="mode">Null while it is not known: then any check may.</param>
    public bool IsOfMode(string? mode) => mode is null || Modes.IsEmpty || Modes.Contains(mode);

    /// <summary>The symptoms at which alone it is asked; empty means all.</summary>
    public ImmutableSortedSet<SymptomId> OnlyAt { get; init; } = [];

    /// <summary>
    /// Whether nothing else is done before it has a result: it is not left out, and no half answer is taken.
    /// </summary>
    public bool Needed { get; init; }

    /// <summary>
    /// Checks that find the same in another way: once one of them gave a result, this one is not asked.
    /// </summary>
    public ImmutableSortedSet<CheckId> SameAs { get; init; } = [];

    /// <summary>
    /// Whether it asks for the mode in which the trouble shows: outcomes that are named as modes tell it.
    /// </summary>
    public bool TellsMode { get; init; }
}
