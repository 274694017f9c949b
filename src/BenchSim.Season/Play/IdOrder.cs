using System.Text;
using BenchSim.Engine.Randomness;

namespace BenchSim.Season.Play;

/// <summary>Orders ids by the bytes of their normal form C.</summary>
internal sealed class IdOrder : IComparer<string>
{
    public static IdOrder Instance { get; } = new();

    public int Compare(string? x, string? y) => Bytes(x).AsSpan().SequenceCompareTo(Bytes(y));

    private static byte[] Bytes(string? id) => Encoding.UTF8.GetBytes(LatinAccents.Join((id ?? "").Normalize(NormalizationForm.FormC)));
}
