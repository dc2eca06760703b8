namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Takes E05 and E5 for one number.</summary>
internal static class LeadingZeros
{
    /// <summary>The code without zeros between its letters and its number.</summary>
    public static string Dropped(string code)
    {
        int letters = code.TakeWhile(char.IsAsciiLetter).Count();
        string number = code[letters..].TrimStart('0');
        return letters == 0 || number.Length == 0 || !number.All(char.IsAsciiDigit) ? code : code[..letters] + number;
    }
}
