"""The program itself under torture: huge files of brackets, and kills at random moments of a cut.

Arguments: the repository's folder, the program as a command, the megabytes of brackets, the number of kills, the seed.
"""
import os
import random
import shlex
import signal
import subprocess
import sys
import tempfile
import time

MOST_SECONDS = 1.0  # of a processor, since others may use the machine; beyond what the program takes to say its version
MOST_MEBIBYTES = 300  # a mebibyte of nothing but signs is a tree of a million pieces

FILLINGS = {"[": "[", "{": "{", '"': '"', "'": "'", "a=[": "[", "a={b=": "{b=", "#": "#", "a.": "a.", "=": "=", "\\n": "\n", 'a="\\"': '\\"'}


def run(command, **options):
    """Exit code, seconds of processor, peak memory in MiB and what was said."""
    process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, **options)
    said = process.stdout.read().decode()
    _, status, usage = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    return process.returncode, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024, said


def brackets(program, folder, mebibytes):
    """Files of brackets, one of the size asked for and one that is just small enough to be read."""
    base = min(run([*program, "--version"])[1] for _ in range(3))
    faults = 0
    for name, filling in FILLINGS.items():
        for size in (mebibytes * 1048576, 1048576 - 8):
            file = os.path.join(folder, "brackets.toml")
            with open(file, "w", encoding="ascii") as out:
                out.write(name if name.startswith("a") and filling != "a." else "")
                block = filling * (65536 // len(filling))
                for _ in range(size // len(block)):
                    out.write(block)
            for verb in (["check", file], ["cut", file, "--out", os.path.join(folder, "out")]):
                code, seconds, memory, said = min((run([*program, *verb]) for _ in range(2)), key=lambda told: told[1])
                is_sound = code == 2 and "brackets.toml" in said and seconds - base <= MOST_SECONDS and memory <= MOST_MEBIBYTES
                faults += not is_sound
                print(f"{'ok   ' if is_sound else 'FAULT'} {verb[0]:5} {size:9} bytes of {name:6} exit {code}, {seconds - base:5.2f} s, {memory:4.0f} MiB: {said.splitlines()[0][:110] if said else ''}")
    return faults


def content(folder):
    return {name: open(os.path.join(folder, name), "rb").read() for name in os.listdir(folder)}


def kills(program, repository, folder, count, seed):
    """Kills cuts that alternate between two drawings of one job: the folder is always one of them, whole."""
    job = os.path.join(repository, "profiles", "jobs", "tide-dial.toml")
    ways = [["--tolerance", "0.001"], ["--tolerance", "0.01"]]
    out = os.path.join(folder, "out")
    wholes, longest = [], 0
    for way in ways:
        start = time.monotonic()
        code, _, _, said = run([*program, "cut", job, "--out", out, *way])
        longest = max(longest, time.monotonic() - start)
        assert code in (0, 1), said
        wholes.append(content(out))
    assert wholes[0] != wholes[1]
    moments, killed, inside, faults = random.Random(seed), 0, 0, 0
    for i in range(count):
        process = subprocess.Popen([*program, "cut", job, "--out", out, *ways[i % 2]], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        time.sleep(moments.random() * longest)
        killed += process.poll() is None
        process.send_signal(signal.SIGKILL)
        process.wait()
        inside += any(name.startswith(".out.") for name in os.listdir(folder))
        faults += content(out) not in wholes
    assert run([*program, "cut", job, "--out", out, *ways[0]])[0] in (0, 1)
    left = [name for name in os.listdir(folder) if name.startswith(".")]
    faults += content(out) != wholes[0] or bool(left)
    print(f"{'FAULT' if faults else 'ok   '} {count} cuts, {killed} killed before their end, {inside} of them while the folder was written; {faults} broken folders")
    return faults


def main():
    repository, program, mebibytes, count, seed = sys.argv[1], shlex.split(sys.argv[2]), *map(int, sys.argv[3:6])
    with tempfile.TemporaryDirectory() as folder:
        faults = brackets(program, folder, mebibytes)
    with tempfile.TemporaryDirectory() as folder:
        faults += kills(program, repository, folder, count, seed)
    sys.exit(1 if faults else 0)


main()
