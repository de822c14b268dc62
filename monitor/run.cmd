@echo off
rem Builds what is missing or older than its source, then hands over to Fifth Form with the arguments as they were typed.
setlocal
set "HOME_DIR=%~dp0.."
set "JAR=%~dp0target\fifthform.jar"
set "BUILT=%~dp0target\built"
if not exist "%JAR%" goto build
if not exist "%BUILT%" goto build
powershell -NoProfile -Command "$b=(Get-Item $env:BUILT).LastWriteTime; $h=$env:HOME_DIR; $n=Get-ChildItem \"$h\pom.xml\",\"$h\*\pom.xml\",\"$h\*\src\main\*\" -Recurse | Where-Object { $_.LastWriteTime -gt $b } | Select-Object -First 1; if ($n) { exit 1 } else { exit 0 }"
if not errorlevel 1 goto start
:build
echo Building Fifth Form; the first time this fetches its libraries and takes a minute or two. 1>&2
call mvn -q -f "%HOME_DIR%\pom.xml" package -Dmaven.test.skip=true 1>&2
if errorlevel 1 exit /b 70
type nul > "%BUILT%"
:start
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
rem One file, or one index, is gone through before the optimising compiler and a collector of several threads have paid for themselves.
set "PACE="
if /i "%~1"=="analyse" set "PACE=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
if /i "%~1"=="notebook" set "PACE=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
rem The Watch screen is there in two thirds of the time without them, and has little to do afterwards.
if /i "%~1"=="watch" set "PACE=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
"%JAVA%" %PACE% -XX:+IgnoreUnrecognizedVMOptions --sun-misc-unsafe-memory-access=allow -jar "%JAR%" %*
exit /b %ERRORLEVEL%
