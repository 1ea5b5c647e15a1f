/*
 * Loaded before the C library of a process (LD_PRELOAD): keeps beside a folder what a disk would have of it if the power failed. A file has what it held at its
 * last fsync or fdatasync, a folder the names that it held at its last fsync. Nothing else is certain to be there (POSIX.1-2024, fsync; Linux man-pages, fsync(2):
 * "Calling fsync() does not necessarily ensure that the entry in the directory containing the file has also reached disk").
 *
 * DISK_ROOT: the folder; DISK_KEPT: where to keep it, each file and folder under the number of its inode.
 */
#define _GNU_SOURCE
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

static void write_all(int to, const char *bytes, size_t count) {
  while (count > 0) {
    ssize_t written = write(to, bytes, count);
    if (written <= 0) abort();
    bytes += written;
    count -= (size_t)written;
  }
}

static void keep_file(const char *from, int to) {
  int file = open(from, O_RDONLY);
  if (file < 0) abort();
  char bytes[65536];
  for (ssize_t count; (count = read(file, bytes, sizeof bytes)) != 0;) {
    if (count < 0) abort();
    write_all(to, bytes, (size_t)count);
  }
  close(file);
}

/* One line for each entry: its inode, "d" or "f", and its name. */
static void keep_folder(const char *from, int to) {
  DIR *folder = opendir(from);
  if (!folder) abort();
  for (struct dirent *entry; (entry = readdir(folder));) {
    if (!strcmp(entry->d_name, ".") || !strcmp(entry->d_name, "..")) continue;
    struct stat about;
    if (fstatat(dirfd(folder), entry->d_name, &about, AT_SYMLINK_NOFOLLOW)) continue;
    dprintf(to, "%llu %c %s\n", (unsigned long long)about.st_ino, S_ISDIR(about.st_mode) ? 'd' : 'f', entry->d_name);
  }
  closedir(folder);
}

static int keep(int fd) {
  const char *root = getenv("DISK_ROOT"), *kept = getenv("DISK_KEPT");
  char link[64], path[PATH_MAX], unfinished[PATH_MAX], name[PATH_MAX];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, sizeof path - 1);
  struct stat about;
  if (fstat(fd, &about)) return -1;
  if (!root || !kept || length < 0) return 0;
  path[length] = 0;
  if (strncmp(path, root, strlen(root))) return 0;
  snprintf(unfinished, sizeof unfinished, "%s/unfinished-%ld", kept, (long)syscall(SYS_gettid));
  snprintf(name, sizeof name, "%s/%llu", kept, (unsigned long long)about.st_ino);
  int to = open(unfinished, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (to < 0) abort();
  if (S_ISDIR(about.st_mode)) keep_folder(link, to);
  else keep_file(link, to);
  close(to);
  if (rename(unfinished, name)) abort();
  return 0;
}

int fsync(int fd) { return keep(fd); }
int fdatasync(int fd) { return keep(fd); }
