namespace DxAssistant.Cases;

/// <summary>Folders for what is nobody else's business, also not another account's on this machine.</summary>
public static class PrivateFolder
{
    /// <summary>Makes a folder, if it is not there, that only this person can open.</summary>
    public static void Make(string folder)
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else Directory.CreateDirectory(
            folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
