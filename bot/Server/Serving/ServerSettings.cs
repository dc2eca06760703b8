using System.Collections.Immutable;
using System.Net;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.Serving;

/// <summary>How the program listens.</summary>
/// <param name="Address">An address of this machine.</param>
/// <param name="Port">0 takes any free one.</param>
/// <param name="ServiceUrls">Addresses of channels, besides this machine, to which replies may be posted.</param>
/// <param name="Pace">Requests a second that one client may make; 0 for no limit.</param>
/// <param name="PageShelf">Folder for the pages that were taken along; null keeps them while the program runs.</param>
/// <param name="News">Where changes of claims are told; null tells nobody.</param>
internal sealed record ServerSettings(
    IPAddress Address, int Port, ImmutableArray<Uri> ServiceUrls, int Pace = Operations.Pace.Usual,
    string? PageShelf = null, NewsSettings? News = null)
{
    /// <summary>The folder of the pages, for authors; null where nobody writes.</summary>
    public string? PagesFolder { get; init; }

    /// <summary>Where proposals of authors are kept; null keeps them while the program runs.</summary>
    public string? Proposals { get; init; }

    /// <summary>After how many days people's own words are removed from cases; null for never.</summary>
    public int? KeepPersonal { get; init; }

    /// <summary>Where people sign in with their company; null where they do not.</summary>
    public CompanySettings? Company { get; init; }

    /// <summary>Names under which others reach the server, besides those of this machine.</summary>
    public ImmutableArray<string> Hosts { get; init; } = [];

    /// <summary>The file of the server's certificate; null to listen without.</summary>
    public string? Certificate { get; init; }

    /// <summary>Whether a proxy in front of the server keeps others from reading along.</summary>
    public bool BehindProxy { get; init; }

    /// <summary>Whether browsers come by HTTPS alone.</summary>
    public bool IsSafe => Certificate is not null || BehindProxy;

    /// <summary>Whether others than this machine's own users may reach the server.</summary>
    public bool IsReachable => !IPAddress.IsLoopback(Address) || BehindProxy || !Hosts.IsEmpty;

    /// <summary>Why the server may not listen like this; null when it may.</summary>
    /// <param name="hasAccounts">Whether people sign in.</param>
    public string? RefuseWithout(bool hasAccounts)
    {
        if (Company is not null && !hasAccounts)
            return "nobody could let people in or look after them: make one account of this program's own first "
                + "(accounts add NAME --role administrator)";
        if (!IsReachable) return null;
        if (!hasAccounts)
        {
            return "others could reach the server, and there are no accounts yet, so anybody could read the cases: "
                + "make an account (accounts add NAME --role administrator), or leave --listen, --host and "
                + "--behind-proxy out";
        }

        return IPAddress.IsLoopback(Address) || IsSafe
            ? null
            : "passwords would go over the network for anybody to read: give --certificate FILE, or --behind-proxy "
                + "where a proxy has one";
    }
}
