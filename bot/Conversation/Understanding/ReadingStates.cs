using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding;

/// <summary>The names of what a meter showed, as they stand in the log.</summary>
internal static class ReadingStates
{
    public static string Name(ReadingState state) => state switch
    {
        ReadingState.Number => "number",
        ReadingState.OpenCircuit => "open-circuit",
        _ => "short-circuit",
    };

    public static ReadingState Of(string name) => name switch
    {
        "number" => ReadingState.Number,
        "open-circuit" => ReadingState.OpenCircuit,
        _ => ReadingState.ShortCircuit,
    };
}
