namespace DxAssistant.Cases;

/// <summary>Where cases are kept unless told otherwise.</summary>
public static class CaseFile
{
    /// <summary><c>dxassistant/cases.db</c> in the folder that the system keeps for programs of this person.</summary>
    public static string Default => Path.Combine(
        Environment.GetFolderPath(
            Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        "dxassistant", "cases.db");

    /// <summary>True for a file that begins as databases of cases do, whatever else stands in it.</summary>
    /// <remarks>Source: SQLite, Database File Format, 1.3.1 (header string).</remarks>
    public static bool IsOne(string file)
    {
        if (!File.Exists(file)) return false;
        byte[] head = new byte[15];
        using var read = File.OpenRead(file);
        return read.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length
            && head.AsSpan().SequenceEqual("SQLite format 3"u8);
    }
}
