namespace DxAssistant.Cases.Requests;

/// <summary>A request under a key.</summary>
/// <param name="Made">The name of what it makes or made.</param>
/// <param name="IsFirst">Whether it is the first under its key.</param>
/// <param name="IsSame">Whether the first under this key asked for the same.</param>
public sealed record KeyedRequest(string Made, bool IsFirst, bool IsSame);
