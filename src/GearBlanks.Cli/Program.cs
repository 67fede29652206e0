using GearBlanks.Cli;

return App.Run(args, Console.Out, Console.Error);
