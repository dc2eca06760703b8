using System.Text;

namespace DxAssistant.Knowledge.Content;

/// <summary>A content folder as one run of bytes, for programs that have no folder to read. The same folder gives the
/// same bytes.</summary>
public static class ContentPack
{
    private static readonly byte[] Mark = "DXP1"u8.ToArray();

    /// <summary>Packs a folder: the mark, the number of files, then path and text of each.</summary>
    public static byte[] Write(ContentFolder folder)
    {
        using var bytes = new MemoryStream();
        using (var writer = new BinaryWriter(bytes, Encoding.UTF8))
        {
            writer.Write(Mark);
            writer.Write(folder.Files.Length);
            foreach (ContentFile file in folder.Files)
            {
                writer.Write(file.Path);
                writer.Write(file.Text);
            }
        }

        return bytes.ToArray();
    }

    /// <summary>Unpacks a folder.</summary>
    /// <exception cref="InvalidDataException">The bytes are no pack, or not a whole one.</exception>
    public static ContentFolder Read(byte[] pack)
    {
        using var reader = new BinaryReader(new MemoryStream(pack), Encoding.UTF8);
        try
        {
            if (!reader.ReadBytes(Mark.Length).AsSpan().SequenceEqual(Mark))
                throw new InvalidDataException("not a pack of pages");
            int files = reader.ReadInt32();
            return ContentFolder.Of(Enumerable.Range(0, Math.Max(files, 0))
                .Select(_ => new ContentFile(reader.ReadString(), reader.ReadString())));
        }
        catch (Exception error) when (error is EndOfStreamException or FormatException or ArgumentException)
        {
            throw new InvalidDataException("the pack of pages is not whole", error);
        }
    }
}
