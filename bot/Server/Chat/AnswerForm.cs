using System.ComponentModel;

namespace DxAssistant.Server.Chat;

/// <summary>
/// What was tapped or filled in, for the description of the API: one of choice, readings and command.
/// </summary>
internal sealed record AnswerForm(
    [property: Description("The id of the question that is answered; one that is not open any more is noticed.")] string? Question,
    [property: Description("The key of the option that was tapped.")] string? Choice,
    [property: Description("The readings by the labels of their fields, as they were typed, with their units.")] Dictionary<string, string>? Readings,
    [property: Description("A command, such as back, why or cannot.")] string? Command);
