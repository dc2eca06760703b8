using System.Data.Common;
using DxAssistant.Cases.Calls;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Codes;
using DxAssistant.Cases.Requests;

namespace DxAssistant.Cases;

/// <summary>What is kept beside the logs of the cases, in the same place as they are.</summary>
public sealed record DeskBooks(IClaimStore Claims, ICallBook Calls, CodeBook Codes, RequestBook Requests)
    : IAsyncDisposable
{
    /// <summary>Last as long as the program.</summary>
    public static DeskBooks InMemory() =>
        new(SqlClaimStore.InMemory(), SqlCallBook.InMemory(), CodeBook.InMemory(), RequestBook.InMemory());

    /// <summary>Beside the cases of a SQLite file.</summary>
    /// <exception cref="CaseFileException">The file cannot be used.</exception>
    public static DeskBooks Open(string file) =>
        new(SqlClaimStore.Open(file), SqlCallBook.Open(file), CodeBook.Open(file), RequestBook.Open(file));

    /// <param name="connect">Makes a connection that is not open yet.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static DeskBooks Open(Func<DbConnection> connect) =>
        new(SqlClaimStore.Open(connect()), SqlCallBook.Open(connect()), CodeBook.Open(connect()),
            RequestBook.Open(connect()));

    public async ValueTask DisposeAsync()
    {
        await Claims.DisposeAsync();
        await Calls.DisposeAsync();
        await Codes.DisposeAsync();
        await Requests.DisposeAsync();
    }
}
