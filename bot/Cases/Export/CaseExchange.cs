using System.Collections.Immutable;
using DxAssistant.Cases.Jobs;
using DxAssistant.Cases.Photos;

namespace DxAssistant.Cases.Export;

/// <summary>Takes whole cases out of a store and into one, photos included.</summary>
public static class CaseExchange
{
    /// <summary>A case as a document; null when there is none.</summary>
    /// <exception cref="CaseFileException">It was altered or cannot be read.</exception>
    public static async Task<CaseDocument?> TakeOutAsync(ICaseStore store, string caseId,
        CancellationToken cancel = default)
    {
        // The document knows only its own rows; the store knows how many there were.
        var kept = await store.ReadRowsAsync(caseId, cancel);
        var log = kept.Open(caseId);
        if (log.IsEmpty) return null;
        var document = new CaseDocument(caseId, kept.Rows);
        var photos = ImmutableArray.CreateBuilder<KeptPhoto>();
        foreach (var photo in Job.Of(log).Photos)
            if (await store.PhotoAsync(caseId, photo.Hash, cancel) is { } bytes)
                photos.Add(new KeptPhoto(photo.Hash, bytes));
        document = document with { Photos = photos.ToImmutable() };
        document.OpenWhole();
        return document;
    }

    /// <summary>Takes a document in.</summary>
    /// <returns>False, and nothing is changed, when a case of this name is there already.</returns>
    /// <exception cref="CaseFileException">It was altered, or could not be saved.</exception>
    public static async Task<bool> TakeInAsync(ICaseStore store, CaseDocument document,
        CancellationToken cancel = default)
    {
        document.OpenWhole();
        if (!await store.TakeOverAsync(document.Id, document.Rows, cancel)) return false;
        foreach (var photo in document.Photos) await store.KeepPhotoAsync(document.Id, photo.Hash, photo.Bytes, cancel);
        return true;
    }

    /// <summary>Checks a case as it is kept; false when there is none.</summary>
    /// <exception cref="CaseFileException">It was altered or cannot be read.</exception>
    public static async Task<bool> IsSoundAsync(ICaseStore store, string caseId, CancellationToken cancel = default) =>
        await TakeOutAsync(store, caseId, cancel) is not null;
}
