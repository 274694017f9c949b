using System.Text;
using BenchSim.Engine.Randomness;

namespace BenchSim.Season.Play;

/// <summary>Orders ids by their bytes, accents joined to their letters as where names are hashed.</summary>
internal sealed class IdOrder : IComparer<string>
{
    public static IdOrder Instance { get; } = new();

    public int Compare(string? x, string? y) => Bytes(x).AsSpan().SequenceCompareTo(Bytes(y));

    private static byte[] Bytes(string? id) => Encoding.UTF8.GetBytes(LatinAccents.Join(id ?? ""));
}
