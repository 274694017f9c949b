using System.Collections.Immutable;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using BenchSim.Answers.Asking;
using BenchSim.Report.Words;

namespace BenchSim.Workbench.Phones;

/// <summary>The addresses of this computer in the farm's own network, at which phones are let in.</summary>
public sealed record Lan
{
    private const string Own = "Addresses of a network of your own begin with 10., with 172.16. to 172.31., with 192.168. or with 169.254.";

    private Lan(ImmutableArray<IPAddress> addresses) => Addresses = addresses;

    /// <summary>The addresses, one or more.</summary>
    public ImmutableArray<IPAddress> Addresses { get; }

    /// <summary>The address that a text asks for, or without one those that this computer has in its own network.</summary>
    /// <param name="address">An IPv4 address; null for those that are there.</param>
    /// <exception cref="RefusedException">It is none, is not of a network of one's own, or there is none.</exception>
    public static Lan Of(string? address)
    {
        if (address is not null)
        {
            return new Lan([Asked(address)]);
        }

        var all = AllOf(NetworkInterface.GetAllNetworkInterfaces());
        return all.IsEmpty
            ? throw new RefusedException(
                $"This computer has no address in a network of its own that phones could reach. {Own} "
                    + "Connect it to the farm's network, or name the address behind --lan."
            )
            : new Lan(all);
    }

    /// <summary>Whether an address is one of a network of one's own (RFC 1918), or one that needs no router (RFC 3927).</summary>
    internal static bool IsOwn(IPAddress address)
    {
        if (address.AddressFamily is not AddressFamily.InterNetwork)
        {
            return false;
        }

        var bytes = address.GetAddressBytes();
        return bytes[0] switch
        {
            10 => true,
            172 => bytes[1] is >= 16 and <= 31,
            192 => bytes[1] == 168,
            169 => bytes[1] == 254,
            _ => false,
        };
    }

    // A loopback address beside the usual one leads nowhere but to this computer: good for trying it out.
    private static IPAddress Asked(string text)
    {
        if (!IPAddress.TryParse(text, out var address) || !string.Equals(address.ToString(), text, StringComparison.Ordinal))
        {
            throw new RefusedException($"--lan {PlainText.Quote(text)} is no address; write one such as 192.168.1.20, or none.");
        }

        if (address.AddressFamily is not AddressFamily.InterNetwork)
        {
            throw new RefusedException($"--lan {text} is no IPv4 address; write one such as 192.168.1.20, or none.");
        }

        if (address.Equals(IPAddress.Loopback))
        {
            throw new RefusedException($"--lan {text} is this computer alone, which the workbench answers anyway; no phone reaches it.");
        }

        return IsOwn(address) || IPAddress.IsLoopback(address)
            ? address
            : throw new RefusedException(
                $"--lan {text} is no address of a network of your own: strangers could knock there, and the link is not encrypted. {Own}"
            );
    }

    // A network with a way out is the one that phones are in; what a machine has for machines inside it has none.
    private static ImmutableArray<IPAddress> AllOf(NetworkInterface[] interfaces)
    {
        var up = interfaces
            .Where(each => each.OperationalStatus is OperationalStatus.Up && each.NetworkInterfaceType is not NetworkInterfaceType.Loopback)
            .Select(each => each.GetIPProperties())
            .Select(properties =>
                (
                    HasWayOut: properties.GatewayAddresses.Any(way => way.Address.AddressFamily is AddressFamily.InterNetwork),
                    Addresses: properties.UnicastAddresses.Select(each => each.Address).Where(IsOwn)
                )
            )
            .ToList();
        ImmutableArray<IPAddress> withWayOut = [.. up.Where(each => each.HasWayOut).SelectMany(each => each.Addresses)];
        return withWayOut.IsEmpty ? [.. up.SelectMany(each => each.Addresses)] : withWayOut;
    }
}
