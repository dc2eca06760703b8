using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Languages;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Bot.Tests.Conversation.Languages;

/// <summary>What Spanish words are taken for. The sentences are not those of the pages.</summary>
public sealed class SpanishWordsTests
{
    private static readonly TongueMatcher Matcher = new(ShippedContent.Library.Translations["es"]);

    [Theory]
    [InlineData("el split de la sala no enfria", "poor-cooling")]
    [InlineData("sopla pero el aire no sale frío", "poor-cooling")]
    [InlineData("el filtro está limpio, pero no enfría bien", "poor-cooling")]
    [InlineData("ya no calienta como antes", "poor-heating")]
    [InlineData("en calefacción sale aire frío", "poor-heating")]
    [InlineData("la evaporadora bota agua", "water-dripping-indoor")]
    [InlineData("está goteando agua la unidad de adentro", "water-dripping-indoor")]
    [InlineData("la turbina no gira", "indoor-fan-not-turning")]
    [InlineData("enciende la luz pero no sale nada de aire", "indoor-fan-not-turning")]
    [InlineData("error de comunicación entre las dos unidades", "communication-code")]
    [InlineData("falla del sensor de ambiente", "room-sensor-code")]
    [InlineData("el aire no prende", "unit-dead")]
    [InlineData("está totalmente muerto, ni luces", "unit-dead")]
    [InlineData("se congela el evaporador", "icing-indoor-coil")]
    [InlineData("hay hielo en la unidad interior", "icing-indoor-coil")]
    [InlineData("no le hace caso al mando", "remote-no-response")]
    [InlineData("el control remoto no hace nada", "remote-no-response")]
    [InlineData("se dispara el breaker al arrancar", "trips-breaker")]
    [InlineData("salta el diferencial", "trips-breaker")]
    public void Match_Complaint_FindsTheSymptomFirst(string words, string symptom) =>
        Assert.Equal(symptom, Matcher.Match(words).Symptoms.FirstOrDefault()?.Id);

    [Theory]
    [InlineData("el ventilador interior funciona bien")]
    [InlineData("quiero comprar un televisor nuevo")]
    [InlineData("cuánto cuesta una visita")]
    public void Match_NothingWrong_IsNoCertainSymptom(string words) =>
        Assert.DoesNotContain(Matcher.Match(words).Symptoms, found => found.Score >= 0.7);

    [Theory]
    [MemberData(nameof(UnsafeSpanish.Requests), MemberType = typeof(UnsafeSpanish))]
    public void Match_UnsafeRequest_IsRefused(string words) =>
        Assert.Equal(MatchDecision.Refuse, Matcher.Match(words).Decision);

    [Theory]
    [MemberData(nameof(UnsafeSpanish.Harmless), MemberType = typeof(UnsafeSpanish))]
    public void Match_HarmlessSentence_IsNotRefused(string words) =>
        Assert.NotEqual(MatchDecision.Refuse, Matcher.Match(words).Decision);

    [Theory]
    [InlineData("marca e cinco parpadeando", "outdoor-fan-code")]
    [InlineData("código b cuatro", "room-sensor-code")]
    [InlineData("be 4 fijo", "room-sensor-code")]
    [InlineData("la pantalla muestra ce cero", "communication-code")]
    [InlineData("la pantalla marca hache seis", "discharge-hot-code")]
    public void Say_SpokenCode_IsRead(string words, string symptom)
    {
        Walker walker = InSpanish();
        walker.Say("Brenholt WS");
        walker.Say(words);
        Assert.Equal(symptom, walker.State.Symptoms.FirstOrDefault()?.Symptom);
    }

    [Theory]
    [InlineData("doscientos ocho voltios", "208 V")]
    [InlineData("cuatro coma cinco voltios", "4.5 V")]
    [InlineData("2,1 kiloohmios", "2,1 kohm")]
    [InlineData("dos mil cien ohmios", "2100 ohm")]
    [InlineData("treinta y un grados", "31 °C")]
    [InlineData("mil doscientos treinta y cuatro ohmios", "1234 ohm")]
    [InlineData("circuito abierto", "open")]
    public void Heard_NumberWords_AreFigures(string words, string heard) =>
        Assert.Equal(heard, new MainTongue(ShippedContent.Library.Languages["es"]).Heard(words));

    [Fact]
    public void Fill_SpanishReadings_AreJudged()
    {
        Walker walker = AtRoomSensor();
        Reply reply = walker.Say("resistencia dos coma uno kiloohmios, temperatura veinticuatro grados");
        OutcomeSeen seen = walker.Log.OfType<OutcomeSeen>().Last();
        Assert.Equal(("room-sensor-resistance", "off-curve"), (seen.Check, seen.Outcome));
        Assert.Contains(reply.Segments, segment => segment.Text.Contains("2,1 kΩ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2,1k a 24 °C")]
    [InlineData("2.1k a 24 grados")]
    public void Say_EitherDecimalMark_IsTheSameReading(string words)
    {
        Walker walker = AtRoomSensor();
        walker.Say(words);
        Assert.Equal("off-curve", walker.Log.OfType<OutcomeSeen>().Last().Outcome);
    }

    [Theory]
    [InlineData("sí, pasa la luz", "clean")]
    [InlineData("llenos de polvo", "blocked")]
    public void Say_AnswerInWords_IsTaken(string words, string outcome)
    {
        Walker walker = InSpanish();
        walker.Say("gotea agua");
        walker.Tap("brenholt-ws");
        walker.Tap("owner");
        for (int turn = 0; turn < 20 && walker.Question.Subject != "filter-look"; turn++)
            if (walker.Question.Subject == "danger-signs") walker.Tap("none");
            else walker.Order(DxAssistant.Conversation.Messages.CommandWord.Skip);
        Assert.Equal("filter-look", walker.Question.Subject);
        walker.Say(words);
        Assert.Equal(outcome, walker.Log.OfType<OutcomeSeen>().Last().Outcome);
    }

    private static Walker InSpanish()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("español");
        return walker;
    }

    private static Walker AtRoomSensor()
    {
        Walker walker = InSpanish();
        walker.Say("código del sensor de ambiente");
        walker.Tap("brenholt-ws");
        walker.Tap("technician");
        for (int turn = 0; turn < 30 && walker.Question.Subject != "room-sensor-resistance"; turn++)
            if (walker.Question.Kind == QuestionKind.Access) walker.MakeSafe();
            else walker.Order(DxAssistant.Conversation.Messages.CommandWord.Skip);
        return walker;
    }
}
