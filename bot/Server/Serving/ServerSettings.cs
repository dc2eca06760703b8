using System.Collections.Immutable;
using System.Net;

namespace DxAssistant.Server.Serving;

/// <summary>How the program listens.</summary>
/// <param name="Address">A loopback address.</param>
/// <param name="Port">0 takes any free one.</param>
/// <param name="ServiceUrls">Addresses of channels, besides this machine, to which replies may be posted.</param>
/// <param name="Pace">Requests a second that one client may make; 0 for no limit.</param>
/// <param name="PageShelf">Folder for the pages that were taken along; null keeps them while the program runs.</param>
internal sealed record ServerSettings(
    IPAddress Address, int Port, ImmutableArray<Uri> ServiceUrls, int Pace = Operations.Pace.Usual,
    string? PageShelf = null);
