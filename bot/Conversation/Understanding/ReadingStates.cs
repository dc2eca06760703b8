using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>The names of what a meter showed, as they stand in the log.</summary>
internal static class ReadingStates
{
    public static string Name(ReadingState state) => state switch
    {
        ReadingState.Number => "number",
        ReadingState.OpenCircuit => "open-circuit",
        ReadingState.ShortCircuit => "short-circuit",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "no such state of a reading"),
    };

    public static ReadingState Of(string name) => name switch
    {
        "number" => ReadingState.Number,
        "open-circuit" => ReadingState.OpenCircuit,
        "short-circuit" => ReadingState.ShortCircuit,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such state of a reading"),
    };
}
