using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>
/// The version of a folder: 16 hexadecimal digits of a hash over the hashes of its files. The hash of a file is kept
/// as long as the file stays in the folder.
/// </summary>
internal sealed class FolderMark
{
    private Dictionary<ContentFile, byte[]> known = new(ReferenceEqualityComparer.Instance);

    public string Of(ContentFolder folder)
    {
        Dictionary<ContentFile, byte[]> now = new(folder.Files.Length, ReferenceEqualityComparer.Instance);
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (ContentFile file in folder.Files)
        {
            if (!known.TryGetValue(file, out byte[]? mark))
                mark = SHA256.HashData(Encoding.UTF8.GetBytes($"{file.Path}\0{file.Text}"));
            now.Add(file, mark);
            hash.AppendData(mark);
        }

        known = now;
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
