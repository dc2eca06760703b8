using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// An owner on the telephone: danger first, then what an owner may look at, then a repair or a booking.
/// </summary>
public sealed class OwnerTests
{
    // An owner who tells one of these is in danger already: DangerTests.
    private static readonly string[] Dangers = ["burning-smell", "leak-alarm-code", "shock-from-casing"];

    public static TheoryData<string> Symptoms =>
        [.. ShippedContent.Library.Symptoms.Keys.Select(id => id.Value).Except(Dangers)];

    [Theory]
    [MemberData(nameof(Symptoms))]
    public void Begin_Owner_IsAskedForSignsOfDangerFirst(string symptom) =>
        Assert.Equal("danger-signs", Begin("owner", symptom).Question.Subject);

    [Theory]
    [InlineData("no-power")]
    [InlineData("remote-control-faulty")]
    public void DeadUnit_Owner_IsNotAskedHowItRuns(string fault)
    {
        WalkRecord walk = HiddenFault.Typical(fault).Walk(Begin("owner", "unit-dead"));
        Assert.DoesNotContain("air-feel", walk.Steps);
        Assert.DoesNotContain("when-it-comes", walk.Steps);
    }

    [Theory]
    [InlineData("burning")]
    [InlineData("shock")]
    [InlineData("hiss")]
    [InlineData("wet")]
    public void Answer_SignOfDanger_EndsInMakingSafe(string sign)
    {
        Walker walker = Begin("owner", "water-dripping-indoor");
        walker.Tap(sign);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution
            && segment.From.OfType<Provenance.Phrase>().Any(phrase => phrase.Id == "closed-stop"));
    }

    [Theory]
    [InlineData("filter-look", "blocked", "wash-filter")]
    [InlineData("settings-look", "wrong", "correct-settings")]
    [InlineData("windows-open", "open", "close-the-room")]
    public void SeenCause_Owner_IsPutRightBeforeAnythingElseIsAsked(string check, string seen, string repair)
    {
        Walker walker = AskedFor(check);
        walker.Tap(seen);
        Assert.Equal((QuestionKind.Repair, repair), (walker.Question.Kind, walker.Question.Subject));
    }

    [Theory]
    [InlineData(CommandWord.Cannot)]
    [InlineData(CommandWord.Unsure)]
    public void CheckLeftOut_Owner_IsNotSentToItsRepair(CommandWord why)
    {
        Walker walker = AtTheEndOf(check => why);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.DoesNotContain(walker.Log.OfType<StepChosen>(), chosen => chosen is { Kind: StepKind.Repair }
            && !ShippedContent.Library.Repairs[new RepairId(chosen.Id)].MayBeUnseen);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-not-looked")));
    }

    [Fact]
    public void CheckThatCannotBeDone_Owner_IsNotSentToAHarmlessRepairEither() =>
        Assert.DoesNotContain(AtTheEndOf(check => CommandWord.Cannot).Log.OfType<StepChosen>(),
            chosen => chosen.Kind == StepKind.Repair);

    private static Walker AskedFor(string check)
    {
        Walker walker = Begin("owner", "poor-cooling");
        walker.Tap("none");
        for (int turn = 0; turn < 20 && walker.Question.Subject != check; turn++)
        {
            Check node = ShippedContent.Library.Graph.Find(new CheckId(walker.Question.Subject))!;
            System.Collections.Immutable.ImmutableArray<double> sound = node.Row(FaultId.NoneOfThese);
            walker.Tap(node.Outcomes[sound.IndexOf(sound.Max())].Value);
        }

        return walker;
    }

    private static Walker AtTheEndOf(Func<string, CommandWord> why)
    {
        Walker walker = Begin("owner", "poor-cooling");
        walker.Tap("none");
        for (int turn = 0; turn < 40 && walker.State.ClosedHow is null; turn++)
            if (walker.Question.Kind == QuestionKind.LeftOut) walker.Tap("end");
            else walker.Order(walker.Question.Kind == QuestionKind.Check
                ? why(walker.Question.Subject)
                : CommandWord.Cannot);
        return walker;
    }

    [Fact]
    public void LoosePlugInEarnestQuestion_Owner_IsBookedRatherThanWatched()
    {
        Walker walker = Begin("owner", "room-sensor-code");
        for (int turn = 0; turn < 40 && walker.State.ClosedHow is null; turn++)
            switch (walker.Question)
            {
                case { Kind: QuestionKind.Check, Subject: "danger-signs" }: walker.Tap("none"); break;
                case { Kind: QuestionKind.Check, Subject: "when-it-comes" }: walker.Tap("random"); break;
                case { Kind: QuestionKind.Check, Subject: "trouble-returns" }: walker.Tap("stays-away"); break;
                case { Kind: QuestionKind.LeftOut }: walker.Tap("end"); break;
                default: walker.Order(CommandWord.Unsure); break;
            }

        Assert.Contains(walker.State.Results, result => result is { Check: "trouble-returns", Outcome: "stays-away" });
        Assert.Equal("book", walker.State.ClosedHow);
    }

    [Theory]
    [InlineData("yes there is a burning smell")]
    [InlineData("yes, I think there's a burning smell near the unit")]
    [InlineData("yes there is water near a plug")]
    [InlineData("I can hear a loud hiss that lasts")]
    public void Danger_SaidInASentence_EndsInMakingSafe(string said)
    {
        Walker walker = Begin("owner", "water-dripping-indoor");
        walker.Say(said);
        Assert.Equal("book", walker.State.ClosedHow);
    }

    [Theory]
    [InlineData("skip")]
    [InlineData("cant reach it")]
    [InlineData("I don't know")]
    public void Danger_PassedOver_IsAskedAgain(string said)
    {
        Walker walker = Begin("owner", "water-dripping-indoor");
        walker.Say(said);
        Assert.Equal("danger-signs", walker.Question.Subject);
    }

    [Theory]
    [InlineData("I never had a burning smell")]
    [InlineData("what if there is a burning smell")]
    [InlineData("just a little hiss")]
    public void Danger_DeniedOrOnlyThoughtOf_IsNotGuessed(string said)
    {
        Walker walker = Begin("owner", "water-dripping-indoor");
        walker.Say(said);
        Assert.Null(walker.State.ClosedHow);
        Assert.Empty(walker.State.Results);
    }

    // What burnt before burns again, and of two signs one is enough.
    [Theory]
    [InlineData("there was a burning smell but it is gone", "burning")]
    [InlineData("a burning smell and a loud hiss that lasts", "hiss")]
    [InlineData("no wait yes theres a burning smell", "burning")]
    [InlineData("yes there is smoke", "burning")]
    [InlineData("yes there is a bit of smoke", "burning")]
    [InlineData("well yes there is smoke", "burning")]
    [InlineData("maybe smoke", "burning")]
    public void Danger_ToldInAnyWordsWhereItIsAsked_EndsTheWalk(string said, string sign)
    {
        Walker walker = Begin("owner", "water-dripping-indoor");
        walker.Say(said);
        Assert.Equal(("book", sign), (walker.State.ClosedHow, Assert.Single(walker.State.Results).Outcome));
    }

    [Theory]
    [InlineData("customer says no burning smell")]
    [InlineData("she says its not smoking")]
    public void Danger_OneDeniedByTheCustomer_FrightensNobody(string said)
    {
        Walker walker = Begin("owner", "water-dripping-indoor");
        walker.Say(said);
        Assert.Null(walker.State.ClosedHow);
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.Contains("Keep away", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Symptoms))]
    public void Walk_OwnerWithTheLikeliestFault_IsAskedMoreThanDangerAndEnds(string symptom)
    {
        Symptom page = ShippedContent.Library.Graph.Find(new SymptomId(symptom))!;
        FaultId fault = page.Causes.Where(cause => cause.Key != FaultId.NoneOfThese)
            .MaxBy(cause => cause.Value * ShippedContent.Library.Graph.Find(cause.Key)!.Weight).Key;
        Walker walker = Begin("owner", symptom);
        WalkRecord record = HiddenFault.Typical(fault.Value).Walk(walker);
        Assert.True(record.Steps.Length >= 2, string.Join(" → ", record.Steps));
        Assert.NotNull(record.End.ClosedHow);
    }

    [Theory]
    [InlineData("water-dripping-indoor", "drain-end-blocked")]
    [InlineData("water-overflow-code", "drain-end-blocked")]
    [InlineData("weak-airflow", "filter-blocked")]
    [InlineData("icing-indoor-coil", "filter-blocked")]
    [InlineData("high-pressure-code", "outdoor-air-short")]
    [InlineData("short-cycling", "outdoor-air-short")]
    [InlineData("poor-cooling", "room-open")]
    [InlineData("poor-heating", "room-open")]
    [InlineData("remote-no-response", "remote-control-faulty")]
    [InlineData("unit-dead", "no-power")]
    [InlineData("wrong-mode-or-settings", "settings-mismatch")]
    [InlineData("poor-cooling", "settings-mismatch")]
    public void Walk_FaultAnOwnerCanMend_IsMendedAndVerified(string symptom, string fault)
    {
        Walker walker = Begin("owner", symptom);
        Assert.Equal("repaired", HiddenFault.Typical(fault).Walk(walker).End.ClosedHow);
    }

    // What somebody else can mend, or what can burn, is not watched.
    [Fact]
    public void End_ASuspectLeads_IsABooking()
    {
        Walker walker = Begin("owner", "coil-sensor-code");
        Assert.Equal("book", HiddenFault.Typical("sensor-plug-loose").Walk(walker).End.ClosedHow);
    }

    [Fact]
    public void End_ASuspectCanBurn_IsABookingWithTheUnitOff()
    {
        Walker walker = Begin("owner", "trips-breaker");
        Assert.Equal("book", HiddenFault.Typical("loose-power-terminal").Walk(walker).End.ClosedHow);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-can-burn")));
    }

    [Fact]
    public void Begin_Technician_IsNotAskedForThem()
    {
        Walker walker = Begin("technician", "water-dripping-indoor");
        Assert.DoesNotContain(walker.Log.OfType<StepChosen>(), chosen => chosen.Id == "danger-signs");
    }

    private static Walker Begin(string role, string symptom) => new Walker(ShippedContent.Assistant)
        .Begin(symptom == "mode-conflict-code" ? "tarn-duo" : "brenholt-ws", role, symptom);
}
