/** All of Assize with its libraries, as one module for the image. */
module assize {
  requires java.desktop;
  requires java.logging;
  requires static java.net.http;
  requires static java.sql;
}
