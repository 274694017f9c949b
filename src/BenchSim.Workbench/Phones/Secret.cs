using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace BenchSim.Workbench.Phones;

/// <summary>Secrets that let somebody in.</summary>
internal static class Secret
{
    private const int Bytes = 32;

    /// <summary>A new secret: 256 random bits, as letters that may stand in an address and in a cookie.</summary>
    public static string Drawn() => Base64Url.EncodeToString(Random());

    /// <summary>A new code of so many digits.</summary>
    /// <param name="digits">Digits, 1 to 9.</param>
    public static string Digits(int digits)
    {
        // The remainder of 64 random bits: each code is as likely as the others but for one part in ten thousand million.
        var drawn = BitConverter.ToUInt64(Random()) % (ulong)Math.Pow(10, digits);
        return drawn.ToString(System.Globalization.CultureInfo.InvariantCulture).PadLeft(digits, '0');
    }

    /// <summary>Whether a secret is the one wanted; told in the same time whatever is wrong with it.</summary>
    public static bool Is(string? given, string wanted) =>
        given is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(wanted));

    // On Linux from the kernel: .NET asks OpenSSL there, which a machine without anything does not have.
    private static byte[] Random()
    {
        if (!OperatingSystem.IsLinux())
        {
            return RandomNumberGenerator.GetBytes(Bytes);
        }

        var secret = new byte[Bytes];
        using var kernel = new FileStream("/dev/urandom", FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        kernel.ReadExactly(secret);
        return secret;
    }
}
