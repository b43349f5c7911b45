using System.CommandLine;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Wainwright.Records;
using Wainwright.Web;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain serve</c>: the workshop's screens, on this machine only.</summary>
internal static class Serve
{
    private const int UsualPort = 5080;

    public static Command Command(Terminal at)
    {
        var port = new Option<int?>("--port") { HelpName = "N", Description = $"Port on this machine. Without it {UsualPort}, or a free one when that is taken." };
        var with = new Option<string[]>("--with") { HelpName = "FILE", Description = "Take this job file or container in first, unless the store has a job of its id already. May stand several times." };
        var store = StoreFolder.Option();
        var command = new Taught("serve", "Serve the workshop's screens on this machine until it is stopped (Ctrl+C).", """
            Examples:
              wain serve
              wain serve --port 8099 --store /srv/van-records
              wain serve --with demo/touring-camper.wain.json
            """) { port, with, store };
        command.Validators.Add(line =>
        {
            if (line.GetValue(port) is < 1 or > 65_535) line.AddError("--port is 1 to 65535.");
        });
        command.SetAction(async (line, stop) =>
        {
            var address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{Port(line.GetValue(port))}");
            var folder = StoreFolder.Named(line.GetValue(store), at);
            using (var records = Store.Open(folder, at.Clock))
                foreach (var file in line.GetValue(with) ?? []) TakeInOnce(records, file, at);
            at.Out.WriteLine($"Records in {folder}\nOpen {address} in a browser on this machine; Ctrl+C stops.");
            try
            {
                return await Shop.Run(folder, address, [], stop).ConfigureAwait(false);
            }
            catch (OperationCanceledException) when (stop.IsCancellationRequested)
            {
                return Exit.Done; // stopped while it was still starting
            }
        });
        return command;
    }

    private static void TakeInOnce(Store records, string file, Terminal at)
    {
        using var given = GivenJob.Open(file, null, at);
        if (records.Find(given.Job.Id) is not null) return;
        var (id, imported) = GivenFile.IsContainer(file)
            ? Import.FromContainer(records, file, "demonstration", null, false)
            : Import.FromFile(records, file, "demonstration", false, null);
        at.Out.WriteLine($"{id}: taken in, {imported.Job!.Parts.Count} parts");
    }

    /// <summary>The port asked for; else the usual one, or one that nobody listens on.</summary>
    private static int Port(int? asked)
    {
        foreach (var wanted in asked is { } one ? (int[])[one] : [UsualPort, 0])
        {
            using var listener = new TcpListener(IPAddress.Loopback, wanted);
            try
            {
                listener.Start();
                return ((IPEndPoint)listener.LocalEndpoint).Port;
            }
            catch (SocketException)
            {
                // taken: the next one; port 0 is any that is free
            }
        }
        throw new BadInputException($"port {asked} is taken by another program; name another --port, or none");
    }
}
