namespace DxAssistant.Cases.Photos;

/// <summary>The bytes of a photo under their hash.</summary>
public sealed record KeptPhoto(string Hash, byte[] Bytes);
