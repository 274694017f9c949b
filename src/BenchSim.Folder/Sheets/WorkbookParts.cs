using System.IO.Compression;
using System.Xml;

namespace BenchSim.Folder.Sheets;

/// <summary>
/// The parts of a workbook (Office Open XML, ECMA-376: XML files in a zip archive), unpacked as they are read and no further than a limit:
/// a small archive may unpack to more than a machine holds.
/// </summary>
internal sealed class WorkbookParts : IDisposable
{
    /// <summary>Most that all parts together may unpack to, bytes. A plan of 10,000 rows unpacks to about 10 MB.</summary>
    public const long LargestUnpacked = 200_000_000;

    private readonly ZipArchive _archive;
    private long _unpacked;

    /// <summary>Opens an archive.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public WorkbookParts(byte[] bytes) => _archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);

    /// <summary>Whether there is a part.</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>Reads a part. What is outside the file is never looked up, and no text in it stands for another.</summary>
    public XmlReader Open(string name)
    {
        var part = Find(name) ?? throw new InvalidDataException($"no part {name}");
        return XmlReader.Create(
            new CountedStream(part.Open(), this),
            new XmlReaderSettings
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                IgnoreComments = true,
                IgnoreProcessingInstructions = true,
                CloseInput = true,
            }
        );
    }

    public void Dispose() => _archive.Dispose();

    private ZipArchiveEntry? Find(string name) =>
        _archive.GetEntry(name)
        ?? _archive.Entries.FirstOrDefault(entry => string.Equals(entry.FullName, name, StringComparison.OrdinalIgnoreCase));

    private void Count(int bytes)
    {
        _unpacked += bytes;
        if (_unpacked > LargestUnpacked)
        {
            throw new UnreadableWorkbookException(
                $"the workbook unpacks to more than {LargestUnpacked / 1_000_000} MB and was not read",
                "keep the one sheet with the table in it, and no pictures"
            );
        }
    }

    // What comes out is counted as it comes: what the archive says of its sizes may be wrong.
    private sealed class CountedStream(Stream part, WorkbookParts parts) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = part.Read(buffer, offset, count);
            parts.Count(read);
            return read;
        }

        public override void Flush() { }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
            part.Dispose();
            base.Dispose(disposing);
        }
    }
}
