using Wainwright.Cli;

return await Wain.Run(args, Terminal.Real()).ConfigureAwait(false);
