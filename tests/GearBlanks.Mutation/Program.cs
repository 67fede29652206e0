using System.Globalization;
using GearBlanks.Mutation;

// repository, folder, processes, namespaces, files; or, as a process that does the work: measure or work
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args is ["work", string ids])
{
    return Worker.Run(ids);
}

if (args is ["measure", string measures, string count, string measured])
{
    return Worker.Measure(measures, int.Parse(count, CultureInfo.InvariantCulture), measured);
}

if (args is not [string repository, string folder, string processes, string namespaces, .. string[] files])
{
    await Console.Error.WriteLineAsync("Arguments: the repository's folder, the kernel's folder to change, processes, namespaces of the tests, files.");
    return 2;
}

return Campaign.Run(Path.GetFullPath(repository), folder, int.Parse(processes, CultureInfo.InvariantCulture), namespaces, files);
