using DxAssistant.Server.Serving;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// A phone on which everything for work without signal is kept, and the site it came from; fetched once for all
/// tests that need it, which run one after the other and begin a sheet of their own each.
/// </summary>
[CollectionDefinition(Name)]
public sealed class KeptPhone : IAsyncLifetime, ICollectionFixture<KeptPhone>
{
    public const string Name = "kept phone";

    internal Site Site { get; private set; } = null!;

    internal Visit Visit { get; private set; } = null!;

    /// <summary>What the server answers with.</summary>
    internal InUse Pages { get; set; } = null!;

    public async Task InitializeAsync()
    {
        Pages = Shipped.Pages;
        Site = await Site.StartAsync(() => Pages);
        Visit = await Visit.StartAsync("Pixel 7");
    }

    public async Task DisposeAsync()
    {
        await Visit.DisposeAsync();
        await Site.DisposeAsync();
    }

    /// <summary>A sheet on which <c>b4</c> was written, ready to be gone on with where there is no signal.</summary>
    internal async Task BeginAsync()
    {
        Pages = Shipped.Pages;
        await Visit.Context.SetOfflineAsync(false);
        await Visit.OpenAsync(Site.Address);
        await Visit.WriteAsync("b4");
        await ReadyAsync(Visit.Page);
    }

    /// <summary>Until signal is back and nothing waits any more.</summary>
    internal async Task HomeAsync()
    {
        await Visit.Context.SetOfflineAsync(false);
        await WaitingAsync(0);
    }

    internal async Task WaitingAsync(int count) =>
        await Visit.Page.WaitForSelectorAsync($"body[data-waiting='{count}']:has(.slip:not(.busy))");

    internal static async Task ReadyAsync(IPage page) => await page.WaitForSelectorAsync(
        "body[data-away=ready][data-kept=yes]", new() { State = WaitForSelectorState.Attached, Timeout = 120_000 });
}
