@echo off
rem Starts Assize with Java 17 or later: the one that lies beside it, else the one in JAVA_HOME,
rem else the one found as "java".
setlocal
set "ASSIZE_OPTIONS=-XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
if exist "%~dp0..\runtime\bin\java.exe" (
  "%~dp0..\runtime\bin\java.exe" %ASSIZE_OPTIONS% -m assize %*
  exit /b
)
set "ASSIZE_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "ASSIZE_JAVA=%JAVA_HOME%\bin\java.exe"
"%ASSIZE_JAVA%" %ASSIZE_OPTIONS% -jar "%~dp0..\lib\assize.jar" %*
exit /b
