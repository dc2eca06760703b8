using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Content;

/// <summary>Reads the pages of a folder.</summary>
/// <param name="changed">Paths below it that changed since the last call; null when anything may have.</param>
internal delegate ContentFolder PageReading(string folder, IReadOnlyCollection<string>? changed);
