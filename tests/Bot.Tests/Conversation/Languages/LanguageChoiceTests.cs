using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation.Languages;

/// <summary>A language is chosen, or recognised and confirmed; it is never switched unasked.</summary>
public sealed class LanguageChoiceTests
{
    [Theory]
    [InlineData("sí", "es")]
    [InlineData("ok", "es")]
    [InlineData("en español por favor", "es")]
    [InlineData("es", "es")]
    [InlineData("no", "en")]
    [InlineData("english", "en")]
    public void FirstMessage_OnceTheLanguageIsChosen_IsUsed(string answer, string language)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("el equipo no enfría");
        walker.Say(answer);
        Assert.Equal(language, walker.State.Language);
        Assert.Equal("poor-cooling", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Theory]
    [InlineData("no calienta y hace mucho ruido afuera", "poor-heating", "noise-outdoor")]
    [InlineData("gotea agua y hace ruido", "water-dripping-indoor", "noise-indoor")]
    [InlineData("huele mal y hace ruido", "smell", "noise-indoor")]
    public void FirstMessage_OfTwoTroubles_LosesNone(string words, string first, string second)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        walker.Say("sí");
        IEnumerable<string> told = walker.State.Unconfirmed.Select(item => item.Thing)
            .OfType<DxAssistant.Conversation.Told.ToldThing.Symptom>().Select(told => told.Id);
        Assert.Contains(first, told);
        Assert.Contains(second, told);
    }

    [Theory]
    [InlineData("parpadea una luz verde 3 y roja 1")]
    [InlineData("la luz verde parpadea 3 veces y la roja 1 vez")]
    [InlineData("luz verde tres y roja uno")]
    public void Lamps_InSpanish_AreRead(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("español");
        walker.Say(words);
        Assert.Equal(("lamp", "green 3, red 1"), (walker.State.Code, walker.State.Look));
    }

    private readonly Walker walker = new(ShippedContent.Assistant);

    [Theory]
    [InlineData("el aire no enfria nada")]
    [InlineData("no enfría")]
    [InlineData("gotea agua por la pared")]
    [InlineData("hola, el equipo no prende desde ayer")]
    [InlineData("salta el interruptor cuando arranca")]
    public void Say_Spanish_IsAskedBeforeAnythingSwitches(string words)
    {
        walker.Say(words);
        Assert.Equal(QuestionKind.Language, walker.Question.Kind);
        Assert.Null(walker.State.Language);
        Assert.Equal(["es", "en"], walker.Question.Options.Select(option => option.Key));
    }

    [Theory]
    [InlineData("no cooling")]
    [InlineData("no heat in sala 2")]
    [InlineData("b4 flashing")]
    [InlineData("E5")]
    [InlineData("2.1k at 24C")]
    [InlineData("unit dead, no display, no beep")]
    [InlineData("Brenholt WS")]
    public void Say_English_IsNotAsked(string words)
    {
        walker.Say(words);
        Assert.NotEqual(QuestionKind.Language, walker.State.Question?.Kind);
    }

    [Fact]
    public void Confirm_Spanish_HearsTheFirstMessageAgain()
    {
        walker.Say("no enfría");
        walker.Tap("es");
        Assert.Equal("es", walker.State.Language);
        Assert.Equal("poor-cooling", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Equal("¿Qué equipo es?", walker.Question.Text);
    }

    [Fact]
    public void Decline_Spanish_IsNotAskedAgain()
    {
        walker.Say("no enfría");
        walker.Tap("en");
        walker.Say("no enfría la sala");
        Assert.NotEqual(QuestionKind.Language, walker.Question.Kind);
        Assert.Equal("en", walker.State.Language);
    }

    [Theory]
    [InlineData("la clim ne refroidit plus", "Français")]
    [InlineData("das Gerät kühlt nicht mehr", "Deutsch")]
    [InlineData("não gela, está pingando água", "Português")]
    [InlineData("il condizionatore non raffredda", "Italiano")]
    public void Say_LanguageNotSpoken_SaysWhatIs(string words, string name)
    {
        Reply reply = walker.Say(words);
        string answer = ShippedContent.Library.Languages.Values.Single(page => page.Name.Text == name).Answer!.Text;
        Assert.Contains(reply.Segments, segment => segment.Text == answer);
        Assert.NotNull(reply.Question);
        Assert.Null(walker.State.Language);
    }

    [Fact]
    public void Say_LanguageInTheMiddleOfAWalk_AsksTheSameCheckInIt()
    {
        walker.Begin("brenholt-ws", "owner", "poor-cooling");
        string subject = walker.Question.Subject;
        walker.Say("Español");
        Assert.Equal(subject, walker.Question.Subject);
        Assert.EndsWith(".es.md", walker.Question.From.OfType<Provenance.Page>()
            .Single().Path, StringComparison.Ordinal);
        walker.Say("english");
        Assert.Equal(subject, walker.Question.Subject);
        Assert.DoesNotContain(".es.md", walker.Question.From.OfType<Provenance.Page>()
            .Single().Path, StringComparison.Ordinal);
    }

    [Fact]
    public void TakeBack_AfterTheChoice_KeepsTheLanguage()
    {
        walker.Say("español");
        walker.Say("no enfría");
        walker.Order(CommandWord.Back);
        Assert.Equal("es", walker.State.Language);
        walker.Order(CommandWord.StartOver);
        Assert.Equal("es", walker.State.Language);
    }

    [Theory]
    [InlineData("atrás", CommandWord.Back)]
    [InlineData("por qué", CommandWord.Why)]
    [InlineData("¿por que?", CommandWord.Why)]
    [InlineData("no sé", CommandWord.Unsure)]
    [InlineData("no se", CommandWord.Unsure)]
    [InlineData("aquí no se puede", CommandWord.Cannot)]
    public void Say_SpanishCommand_DoesWhatTheButtonDoes(string words, CommandWord word)
    {
        Reply spoken = AtFilter().Say(words);
        Reply ordered = AtFilter().Order(word);
        Assert.Equal(ordered.Segments.Select(segment => segment.Text), spoken.Segments.Select(segment => segment.Text));
    }

    private static Walker AtFilter()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("español");
        walker.Say("enfría poco");
        walker.Tap("brenholt-ws");
        walker.Tap("owner");
        walker.Tap("none");
        return walker;
    }

    [Fact]
    public void Log_OfAChoice_HoldsIt()
    {
        walker.Say("español");
        Assert.Equal("es", Assert.Single(walker.Log.OfType<LanguageChosen>()).Language);
    }
}
