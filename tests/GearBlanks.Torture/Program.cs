using System.Globalization;
using GearBlanks.Torture;

// Spoilt jobs through reader, resolver and check. Arguments: the repository's folder, where failing inputs go, how many, from which seed.
(string repository, string failures) = (args[0], args[1]);
int count = int.Parse(args[2], CultureInfo.InvariantCulture);
int seed = int.Parse(args[3], CultureInfo.InvariantCulture);

var run = new SpoiltJobs(repository, failures, seed);
run.Try(count);
Console.WriteLine(run.Told());
return run.Failed == 0 ? 0 : 1;
