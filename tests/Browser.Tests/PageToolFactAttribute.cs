namespace DxAssistant.Browser.Tests;

/// <summary>
/// A test that needs what <c>npm ci</c> installs in <c>tests/Pages</c>: skipped, and counted as skipped, where it
/// is not; in CI it runs and fails.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PageToolFactAttribute : FactAttribute
{
    public PageToolFactAttribute()
    {
        if (!PageTools.AreHere && !Chromium.Required) Skip = "run npm ci in tests/Pages first";
    }
}
