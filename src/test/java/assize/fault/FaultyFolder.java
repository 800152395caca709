package assize.fault;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Path;
import java.util.Iterator;

/** What a folder holds, on the faulty disk. */
record FaultyFolder(DirectoryStream<Path> all, FaultySystem system)
    implements DirectoryStream<Path> {
  @Override
  public Iterator<Path> iterator() {
    Iterator<Path> bare = all.iterator();
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return bare.hasNext();
      }

      @Override
      public Path next() {
        return system.over(bare.next());
      }
    };
  }

  @Override
  public void close() throws IOException {
    all.close();
  }
}
