using System.ComponentModel;

namespace DxAssistant.Server.Chat;

/// <summary>A turn as it is sent, for the description of the API; <see cref="TurnRequest"/> reads it.</summary>
internal sealed record TurnForm(
    [property: Description("A name of your own for the turn, unique within the case: sent again, it is not a "
        + "second turn.")] string TurnId,
    [property: Description("What the person said or typed, at most 4000 characters; instead of an answer.")] string? Text,
    [property: Description("The id of the question that the text answers.")] string? Question,
    [property: Description("What the person tapped or filled in; instead of a text.")] AnswerForm? Answer);
