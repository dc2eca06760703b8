using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Whoever is hurt or in danger is helped before anything else, and nobody is frightened for nothing.
/// </summary>
public sealed class FirstHelpTests
{
    private const string Gas = "light no flame and touch no switch";

    [Theory]
    [InlineData("my husband fell off the ladder and is bleeding", "First the person")]
    [InlineData("he got a shock and is not breathing", "First the person")]
    [InlineData("my son's finger is stuck in the fan", "First the person")]
    [InlineData("i feel dizzy since the gas came out", "First the person. Out into fresh air")]
    [InlineData("my husband passed out he is not waking up", "First the person. If")]
    [InlineData("I dont know what to do he passed out", "First the person. If")]
    [InlineData("he fell off the ladder I dont know what to do", "First the person. If")]
    [InlineData("my husband is unconscious on the floor by the unit", "First the person. If")]
    [InlineData("my little son is bleeding from his hand", "First the person. If")]
    [InlineData("she wont wake up", "First the person. If")]
    [InlineData("one of the kids got hurt", "First the person. If")]
    [InlineData("my dad collapsed", "First the person. If")]
    [InlineData("he cannot let go of the pipe", "First the person. If")]
    [InlineData("my son put his hand in the fan", "First the person. If")]
    [InlineData("he got sprayed with refrigerant", "Rinse skin or eyes")]
    [InlineData("there are exposed wires at the outdoor unit", "Do not touch bare, cut or chewed wires")]
    [InlineData("the bracket is pulling out of the wall", "Stay out from under it")]
    [InlineData("se quedó pegado al aparato", "Primero la persona. Si")]
    [InlineData("refrigerant sprayed in my face", "Rinse skin or eyes")]
    [InlineData("the outdoor unit is hanging off the wall", "Stay out from under it")]
    [InlineData("a rat chewed through the wires", "Do not touch bare, cut or chewed wires")]
    [InlineData("my hand got burned on the heater", "First the person. If")]
    [InlineData("el técnico se cayó de la escalera", "Primero la persona")]
    public void PersonInNeed_AnyWords_IsHelpedFirst(string words, string caution)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.StartsWith(caution, walker.Reply.Segments.First(segment => segment.Kind == SegmentKind.Caution).Text,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nobody is hurt, it just drips")]
    [InlineData("i am sick of this noise")]
    [InlineData("luckily nobody got hurt")]
    [InlineData("she says it fell off the wall mount holder of the remote")]
    [InlineData("he says the filter is stuck to the frame")]
    [InlineData("the outside temperature is going to fall tonight")]
    [InlineData("the storm knocked out the power")]
    [InlineData("the compressor is bleeding to earth")]
    [InlineData("el equipo no responde al control remoto")]
    [InlineData("nadie está herido")]
    [InlineData("the remote fell off the wall")]
    [InlineData("the filter is stuck")]
    [InlineData("the louver is stuck in one place")]
    [InlineData("i cut the power at the breaker")]
    [InlineData("the pump is short of water")]
    [InlineData("my back hurts from sleeping but the unit does not cool")]
    public void NobodyInNeed_IsToldNothingOfHelp(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Caution);
    }

    [Fact]
    public void PersonInNeed_BesideATrouble_TheTroubleIsKept()
    {
        Walker walker = Opened();
        walker.Say("water drips from the indoor unit, i slipped on it and hurt my back");
        Assert.Equal("water-dripping-indoor", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Fact]
    public void Gas_WithSomebodyDizzy_NamesNoSwitchButToLeaveIt()
    {
        Walker walker = Opened();
        walker.Say("I smell gas and I feel dizzy");
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.Contains("at the breaker", StringComparison.Ordinal));
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains("fresh air", StringComparison.Ordinal));
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
    }

    [Fact]
    public void PersonInNeed_AtAStep_TheStepStands()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "poor-cooling");
        string step = walker.Question.Subject;
        walker.Say("my helper cut his hand");
        Assert.Equal(step, walker.Question.Subject);
    }

    private static Walker Opened()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        return walker;
    }
}
