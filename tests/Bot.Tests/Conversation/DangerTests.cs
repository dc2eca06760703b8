using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Danger is taken at once, whoever tells it, in whatever words and whatever is asked.</summary>
public sealed class DangerTests
{
    private const string Fire = "At smoke or fire, go out first";
    private const string Shock = "Touch neither the unit, its pipes";
    private const string Wet = "Do not touch the water";
    private const string Gas = "light no flame and touch no switch";

    [Theory]
    [InlineData("its on fire", Fire)]
    [InlineData("help unit caught fire!!", Fire)]
    [InlineData("smoke coming out", Fire)]
    [InlineData("I got a shock off the unit", Shock)]
    [InlineData("my wife got zapped when she touched the outdoor unit", Shock)]
    [InlineData("there are sparks coming out of the outside unit", Fire)]
    [InlineData("its smokin", Fire)]
    [InlineData("there is a fire up there", Fire)]
    [InlineData("90 volts from the casing to ground", Shock)]
    [InlineData("water is dripping out of the ceiling light under it", Wet)]
    [InlineData("me da toques cuando lo toco", "No toque el equipo, sus tubos")]
    [InlineData("there is a burning smell and sparks from the outdoor unit", Fire)]
    [InlineData("fan is noisy, filter is clean, and now theres smoke coming out of the outdoor unit", Fire)]
    [InlineData("brenholt wall unit, the plug is melting", Fire)]
    [InlineData("the breaker is hot to the touch", Fire)]
    [InlineData("it is leaking onto the socket", Wet)]
    [InlineData("water is running into the outlet", Wet)]
    [InlineData("i got a tingle when i touched the outside unit", Shock)]
    [InlineData("wait now i can smell burning", Fire)]
    [InlineData("water is dripping onto the socket below", Wet)]
    [InlineData("the water is dripping onto the power outlet", Wet)]
    [InlineData("water is running down the wall over a socket", Wet)]
    [InlineData("there is a sweet chemical smell from it and my eyes sting", Gas)]
    [InlineData("gas smell", Gas)]
    [InlineData("i can smell gas in the bedroom", Gas)]
    [InlineData("smells like rotten eggs near the unit", Gas)]
    [InlineData("sale humo del equipo", "salga primero")]
    [InlineData("fuego!! el split está en llamas", "salga primero")]
    [InlineData("huele a gas en el cuarto", "no encienda ninguna llama")]
    public void Danger_AsFirstWords_IsAnsweredAtOnceAndThePersonAsked(string words, string caution)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution
            && segment.Text.Contains(caution, StringComparison.Ordinal));
        Assert.Equal(QuestionKind.Role, walker.Question.Kind);
    }

    [Theory]
    [InlineData("Burning smell or smoke: keep away. maybe Memory or model data code", "technician")]
    [InlineData("smells burnt and the memory code is on", "refrigerant")]
    [InlineData("not heating. there is a burning smell", "technician")]
    public void BurningSmell_BesideAnotherTrouble_IsWorkedOnDeadFirst(string words, string role)
    {
        Walker walker = Opened();
        walker.Say(words);
        walker.Tap(role);
        walker.Tap("tarn-duo");
        // A trouble that is not clear is asked for before the walk begins.
        if (walker.Question.Kind == QuestionKind.Told) walker.Tap("yes");
        Assert.Contains(walker.State.Symptoms, known => known.Symptom == "burning-smell");
        // What is only asked, like a storm before, may come first; it can be asked at a dead unit too.
        Assert.Contains(new AccessId("isolated-open"),
            ShippedContent.Library.Graph.Find(new CheckId(walker.State.Step!.Id))!.Access);
    }

    [Theory]
    [InlineData("it smells burnt and the indoor fan does not turn", Fire, "indoor-fan-not-turning")]
    [InlineData("smoke comes out of the indoor unit and water drips from it", Fire, "water-dripping-indoor")]
    [InlineData("i got a shock off the unit and the display is dark", Shock, "no-display")]
    public void Trouble_BesideADanger_IsNotLost(string words, string caution, string symptom)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution
            && segment.Text.Contains(caution, StringComparison.Ordinal));
        walker.Tap("technician");
        walker.Tap("brenholt-ws");
        // What no fault explains together with the danger comes after it.
        Assert.True(walker.State.Symptoms.Any(known => known.Symptom == symptom)
            || walker.State.PutOff.Contains(symptom));
        Assert.NotEqual(QuestionKind.First, walker.Question.Kind);
    }

    [Fact]
    public void Trouble_BesideADangerAndNotClear_IsAskedFor()
    {
        Walker walker = Opened();
        walker.Say("it smells burnt and the fan is stuck");
        walker.Tap("technician");
        walker.Tap("brenholt-ws");
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        string added = walker.Question.Options.First(option => option.Label.EndsWith(
            ShippedContent.Library.Symptoms[new SymptomId("indoor-fan-not-turning")].Title.Text,
            StringComparison.Ordinal)).Key;
        walker.Tap(added);
        walker.Tap("yes");
        Assert.Contains(walker.State.Symptoms, known => known.Symptom == "indoor-fan-not-turning");
    }

    [Fact]
    public void Person_NamedBesideADanger_IsNotAskedFor()
    {
        Walker walker = Opened();
        walker.Say("technician here, brenholt ws, it smells burnt");
        Assert.Equal("technician", walker.State.Role);
        Assert.Equal("brenholt-ws", walker.State.Series);
    }

    [Fact]
    public void BurningSmell_InTheMiddleOfAWalk_IsWorkedOnDeadFirst()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "poor-cooling");
        walker.Say("now it smells burnt");
        // What is only asked, like a storm before, may come first; it can be asked at a dead unit too.
        while (walker.Question.Kind == QuestionKind.Check)
        {
            Assert.Contains(new AccessId("isolated-open"),
                ShippedContent.Library.Graph.Find(new CheckId(walker.State.Step!.Id))!.Access);
            walker.Tap(walker.Question.Options[0].Key);
        }

        walker.MakeSafe();
        Assert.Equal("isolated-open", walker.State.Step!.Access);
    }

    [Fact]
    public void Dangers_TwoInOneMessage_AreBothAnswered()
    {
        Walker walker = Opened();
        walker.Say("I got a shock from the unit and now it is on fire");
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Fire, StringComparison.Ordinal));
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Shock, StringComparison.Ordinal));
    }

    // "None of these" was true when it was said.
    [Theory]
    [InlineData("stray voltage on the housing", Shock)]
    [InlineData("smell of hot wires", Fire)]
    public void Danger_LaterThanNoneOfThese_StopsTheOwner(string words, string caution)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        walker.Tap("none");
        walker.Say(words);
        if (walker.Question.Kind != QuestionKind.Closed) walker.Tap(walker.Question.Options[0].Key);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.State.LastReply!.Segments,
            segment => segment.Text.Contains(caution, StringComparison.Ordinal));
    }

    [Fact]
    public void Shock_Technician_HearsOfTheLiveCasingBeforeTheFirstStep()
    {
        Walker walker = Opened();
        walker.Say("technician, brenholt ws, I get a shock off the outdoor casing");
        Assert.Contains(walker.Reply.Segments, segment => segment.From.OfType<Provenance.Page>()
            .Any(from => from.Path.Contains("live-casing", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("no smoke, but it does not cool")]
    [InlineData("the smoke detector in the hall is new, unit wont heat")]
    [InlineData("it fires up and then stops cooling")]
    [InlineData("hot gas line is cold, no cooling")]
    [InlineData("what do I do if smoke comes out")]
    [InlineData("no burning smell, unit dead")]
    [InlineData("yes fire it up, nothing happens")]
    public void NoDanger_IsNotTakenForIt(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Text.Contains(Fire, StringComparison.Ordinal));
    }

    [Fact]
    public void Owner_WhoTellsDangerFirst_IsDoneAfterTheRole()
    {
        Walker walker = Opened();
        walker.Say("smoke coming out of the indoor unit");
        walker.Tap("owner");
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.StartsWith("Stop here.", StringComparison.Ordinal));
    }

    [Fact]
    public void Technician_WhoTellsDangerFirst_GoesOnWithItAsTheTrouble()
    {
        Walker walker = Opened();
        walker.Say("its on fire");
        walker.Tap("technician");
        Assert.Equal("burning-smell", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Equal(QuestionKind.Series, walker.Question.Kind);
        walker.Tap("brenholt-ws");
        Assert.NotEqual(QuestionKind.Closed, walker.Question.Kind);
    }

    [Fact]
    public void Danger_WhileChoicesAreOpen_IsTakenBeforeThem()
    {
        Walker walker = Opened();
        walker.Say("shows E6");
        walker.Say("now there is smoke coming out");
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Fire, StringComparison.Ordinal));
        Assert.Equal(QuestionKind.Role, walker.Question.Kind);
    }

    [Fact]
    public void Danger_InTheMiddleOfAnOwnersWalk_EndsIt()
    {
        Walker walker = Opened().Begin("brenholt-ws", "owner", "poor-cooling");
        walker.Tap("none");
        Assert.NotEqual("danger-signs", walker.Question.Subject);
        walker.Say("oh no, smoke is coming out now");
        Assert.Equal("book", walker.State.ClosedHow);
    }

    // Words of danger that tell of none.
    [Theory]
    [InlineData("the breaker trips on hot days")]
    [InlineData("breaker keeps tripping in hot weather")]
    [InlineData("water is dripping from the air outlet")]
    [InlineData("the air from the outlet is hot")]
    [InlineData("the fan is running but weak air at the outlet")]
    [InlineData("the breaker trips in wet weather")]
    [InlineData("the unit is mounted over the socket and it wont cool")]
    public void Trouble_InWordsOfDanger_IsNoDanger(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution);
    }

    // What is not known of the unit comes after what may be in the air.
    [Theory]
    [InlineData("no idea but i smell gas")]
    [InlineData("i dont know, i can smell gas")]
    public void Danger_BesideNotKnowing_IsHeard(string words)
    {
        Walker walker = Opened();
        walker.Say("no heat");
        Assert.Equal(QuestionKind.Series, walker.Question.Kind);
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
    }

    // Who is at the unit was not asked anew in older logs.
    [Fact]
    public void StartedOver_InAnOlderLog_KeepsThePerson()
    {
        CaseState before = Opened().Begin("brenholt-ws", "technician", "poor-cooling").State;
        Assert.Equal("technician", Fold.Apply(before, new StartedOver()).Role);
    }

    // "No smoke" answers one sign of danger, the hiss is another.
    [Fact]
    public void Danger_BesideADeniedOne_IsTheAnswer()
    {
        Walker walker = Opened().Begin("brenholt-ws", "owner", "poor-heating");
        walker.Say("no smoke, but a hiss all the time quite loud");
        Assert.Equal("hiss", walker.State.Results.Single(result => result.Check == "danger-signs").Outcome);
        Assert.Equal("book", walker.State.ClosedHow);
    }

    // What is said at the end is about the danger that was told.
    [Fact]
    public void Water_AtASocket_EndsWithoutWordsOfGas()
    {
        Walker walker = Opened();
        walker.Say("the socket under it is wet");
        walker.Tap("owner");
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Wet, StringComparison.Ordinal));
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
    }

    [Fact]
    public void BurningSmell_WithoutAKnownPerson_IsSwitchedOffAtOnce()
    {
        Walker walker = Opened();
        walker.Say("Burning smell or smoke: keep away");
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution
            && segment.Text.Contains(Fire, StringComparison.Ordinal));
    }

    // Another caller may follow: what a technician may do is asked for anew.
    [Fact]
    public void NewCase_AfterATechnicians_AsksWhoIsThere()
    {
        Walker walker = Opened().Begin("brenholt-ws", "technician", "poor-cooling");
        walker.Order(CommandWord.StartOver);
        Assert.Null(walker.State.Role);
        walker.Begin("brenholt-ws", "owner", "poor-cooling");
        Assert.Equal("danger-signs", walker.Question.Subject);
    }

    // Whoever pulled a plug for a check puts it back before the supply comes on.
    [Theory]
    [InlineData("open-running")]
    [InlineData("closed-running")]
    [InlineData("gauges-on")]
    public void Supply_BeforeItComesOn_EveryPlugIsBack(string access) => Assert.Contains(
        ShippedContent.Library.Access[new AccessId(access)].Steps,
        step => step.Do.Text.Contains("plug and lead", StringComparison.Ordinal));

    [Fact]
    public void Danger_InTheMiddleOfATechniciansWalk_IsSaidOnceAndTheStepStands()
    {
        Walker walker = Opened().Begin("brenholt-ws", "technician", "poor-cooling");
        string step = walker.Question.Subject;
        walker.Say("there is smoke coming out of the board");
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Fire, StringComparison.Ordinal));
        Assert.NotEqual(QuestionKind.Closed, walker.Question.Kind);
        Assert.NotEqual("", step);
    }

    private static Walker Opened()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        return walker;
    }

    [Theory]
    [InlineData("there is a fire in the unit", true)]
    [InlineData("fire in the unit", true)]
    [InlineData("i fired up the unit", false)]
    [InlineData("the fireplace is next to the unit", false)]
    [InlineData("no fire in the unit", false)]
    public void Fire_InTheUnit_IsDanger(string words, bool isDanger)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(words);
        Assert.Equal(isDanger,
            walker.Reply.Segments.Any(segment => segment.Text.StartsWith(Fire, StringComparison.Ordinal)));
    }

    // What is told by mistake is taken back, but not without a word.
    [Fact]
    public void Danger_TakenBack_IsWarnedOfOnceMore()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "water-dripping-indoor");
        walker.Say("water drips onto the socket");
        Assert.Equal(QuestionKind.Closed, walker.Question.Kind);
        walker.Say("back");
        Assert.Single(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-taken-back-danger")));
        walker.Say("back");
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-taken-back-danger")));
    }
}
