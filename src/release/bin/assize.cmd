@echo off
rem Starts Assize with Java 17 or later: the one that lies beside it, else the one in JAVA_HOME,
rem else the one found as "java". Where there is none this ends with 127.
setlocal
set "ASSIZE_OPTIONS=-XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
if exist "%~dp0..\runtime\bin\java.exe" (
  "%~dp0..\runtime\bin\java.exe" %ASSIZE_OPTIONS% -m assize %*
  exit /b
)
set "ASSIZE_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "ASSIZE_JAVA=%JAVA_HOME%\bin\java.exe"
"%ASSIZE_JAVA%" %ASSIZE_OPTIONS% -jar "%~dp0..\lib\assize.jar" %*
rem What the shell says of a command that it does not find.
if %ERRORLEVEL% equ 9009 (
  echo assize: there is no Java here; install Java 17 or later, or say where it is by JAVA_HOME 1>&2
  exit /b 127
)
exit /b
