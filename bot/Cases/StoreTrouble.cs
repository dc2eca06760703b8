using System.Data;
using System.Data.Common;
using System.Net.Sockets;

namespace DxAssistant.Cases;

/// <summary>Tells what befell a database, or the way to it, from what this program did wrong.</summary>
internal static class StoreTrouble
{
    /// <summary>What whoever keeps the program can do about a database that does not answer.</summary>
    public const string Remedy =
        "see that the database runs and that the network to it stands, then send it again; nothing that was answered "
            + "is lost";

    /// <summary>Whether an error is of the database or of the way to it.</summary>
    /// <param name="cancel">What the caller may give up by: then it is no trouble.</param>
    public static bool Is(Exception error, CancellationToken cancel) => error switch
    {
        DbException or IOException or SocketException or TimeoutException => true,
        OperationCanceledException => !cancel.IsCancellationRequested,
        _ => false,
    };

    /// <summary>The same, or what is said of a connection that was cut off in the midst of something.</summary>
    public static bool Is(Exception error, DbConnection used, CancellationToken cancel) =>
        Is(error, cancel) || (error is InvalidOperationException && used.State != ConnectionState.Open);
}
