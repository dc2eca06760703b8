namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// A test that needs <see cref="SmallDisk"/>: skipped, and counted as skipped, where there can be none.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class SmallDiskFactAttribute : FactAttribute
{
    public SmallDiskFactAttribute()
    {
        if (!SmallDisk.IsThere) Skip = "this machine lets nobody mount a disk of their own";
    }
}
