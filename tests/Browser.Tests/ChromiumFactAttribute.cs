namespace DxAssistant.Browser.Tests;

/// <summary>A test that needs Chromium: skipped, and counted as skipped, where there is none; in CI it runs and
/// fails.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ChromiumFactAttribute : FactAttribute
{
    public ChromiumFactAttribute()
    {
        if (Chromium.Path is null && !Chromium.Required)
            Skip = "no Chromium on this machine: install the package chromium";
    }
}
