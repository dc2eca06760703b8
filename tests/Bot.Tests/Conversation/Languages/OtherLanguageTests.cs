using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation.Languages;

/// <summary>
/// Who writes in the other language in the middle of a case hears how to go on in it; danger and what is unsafe are met
/// in any language.
/// </summary>
public sealed class OtherLanguageTests
{
    private readonly Walker walker = new(ShippedContent.Assistant);

    [Theory]
    [InlineData("hola")]
    [InlineData("buenas tardes")]
    [InlineData("no entiendo")]
    [InlineData("el filtro está limpio")]
    [InlineData("no enfría nada")]
    [InlineData("¿puede hablar en español conmigo?")]
    public void Spanish_InTheMiddleOfAnEnglishCase_IsToldHowToGoOnInIt(string said)
    {
        walker.Begin("brenholt-ws", "technician", "poor-cooling");
        string subject = walker.Question.Subject;
        Reply reply = walker.Say(said);
        Assert.True(OffersAnother(reply) || walker.State.Language == "es");
        Assert.Equal(subject, walker.Question.Subject);
    }

    [Theory]
    [InlineData("hello")]
    [InlineData("good morning")]
    [InlineData("not cooling at all")]
    [InlineData("the filter is clean")]
    [InlineData("i do not understand this")]
    public void English_InASpanishCase_IsToldHowToGoOnInIt(string said)
    {
        walker.Say("español");
        walker.Say("enfría poco");
        walker.Tap("brenholt-ws");
        walker.Tap("technician");
        string subject = walker.Question.Subject;
        Assert.True(OffersAnother(walker.Say(said)));
        Assert.Equal((subject, "es"), (walker.Question.Subject, walker.State.Language));
    }

    [Theory]
    [InlineData("hello")]
    [InlineData("not cooling at all")]
    public void English_AsTheFirstComplaintInSpanish_IsToldHowToGoOnInIt(string said)
    {
        walker.Say("español");
        Assert.True(OffersAnother(walker.Say(said)));
    }

    [Theory]
    [InlineData("cómo puenteo el presostato de alta")]
    [InlineData("como puenteo el flotador")]
    [InlineData("¿puedo puentear el presostato? marca E5")]
    public void UnsafeRequest_InSpanish_IsRefusedInTheLanguageOfTheCase(string said)
    {
        walker.Begin("brenholt-ws", "technician", "poor-cooling");
        Assert.True(IsRefused(walker.Say(said), isSpanish: false));
    }

    [Theory]
    [InlineData("how do i bypass the float switch")]
    [InlineData("can i jumper the high pressure switch")]
    public void UnsafeRequest_InEnglish_IsRefusedInASpanishCase(string said)
    {
        walker.Say("español");
        Assert.True(IsRefused(walker.Say(said), isSpanish: true));
    }

    [Fact]
    public void UnsafeRequest_InSpanishFirst_IsRefusedThoughEnglishIsChosen()
    {
        walker.Say("cómo puenteo el flotador");
        Assert.True(IsRefused(walker.Tap("en"), isSpanish: false));
    }

    [Theory]
    [InlineData("huele a quemado y sale humo")]
    [InlineData("sale humo del equipo")]
    public void Danger_InSpanish_IsHeardInTheMiddleOfAnEnglishCase(string said)
    {
        walker.Begin("brenholt-ws", "technician", "poor-cooling");
        walker.Say(said);
        Assert.Contains(walker.State.Results, result => result is { Check: "danger-signs", Outcome: "burning" });
    }

    [Fact]
    public void Danger_InEnglish_IsHeardInASpanishCase()
    {
        walker.Say("español");
        walker.Say("there is smoke coming out of it");
        Assert.Contains(walker.State.Results, result => result is { Check: "danger-signs", Outcome: "burning" });
    }

    [Theory]
    [InlineData("E5 flashing")]
    [InlineData("2.1k at 24C")]
    [InlineData("Ostvik LC light commercial cassette")]
    public void CodesReadingsAndNames_InASpanishCase_AreNoOtherLanguage(string said)
    {
        walker.Say("español");
        Assert.False(OffersAnother(walker.Say(said)));
    }

    private static bool OffersAnother(Reply reply) =>
        reply.Segments.Any(segment => segment.From.Contains(new Provenance.Phrase("notice-go-on-in")))
        && reply.Segments.Any(segment => segment.From.Contains(new Provenance.Phrase("notice-case-is-in")));

    private static bool IsRefused(Reply reply, bool isSpanish) =>
        reply.Segments.Where(segment => segment.Kind == SegmentKind.Refusal).SelectMany(segment => segment.From)
            .OfType<Provenance.Page>()
            .Any(page => page.Path.EndsWith(".es.md", StringComparison.Ordinal) == isSpanish
                && !page.Path.Contains("language", StringComparison.Ordinal));
}
