@echo off
rem Starts the program of this image with whatever Java 17 or newer there is.
setlocal
set "IMAGE=%~dp0.."
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"

rem Felix reaches for sun.misc.Unsafe; newer JDKs would say so at every start. The option is unknown to older ones.
set "QUIET="
"%JAVA%" --sun-misc-unsafe-memory-access=allow -version >nul 2>&1 && set "QUIET=--sun-misc-unsafe-memory-access=allow"

"%JAVA%" %QUIET% -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -Dfile.encoding=UTF-8 ^
    "-Djava.util.logging.config.file=%IMAGE%\lib\logging.properties" ^
    -jar "%IMAGE%\lib\pippinry.host.jar" --image "%IMAGE%" %*
exit /b %ERRORLEVEL%
