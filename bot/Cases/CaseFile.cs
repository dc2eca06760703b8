namespace DxAssistant.Cases;

/// <summary>Where cases are kept unless told otherwise.</summary>
public static class CaseFile
{
    /// <summary><c>dxassistant/cases.db</c> in the folder that the system keeps for programs of this person.</summary>
    public static string Default => Path.Combine(
        Environment.GetFolderPath(
            Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        "dxassistant", "cases.db");
}
